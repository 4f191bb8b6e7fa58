package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import slotledger.app.TeamDesk;
import slotledger.model.project.Author;
import slotledger.model.project.PasswordPrompt;
import slotledger.model.project.TeamRole;

/** A door to no database: remembers what it was asked. */
final class FakeTeam implements TeamDesk {

    private final List<String> calls;

    FakeTeam(List<String> calls) {
        this.calls = calls;
    }

    @Override
    public void prepare(String url, Optional<String> user) {
        calls.add("prepare " + url + " " + user.orElse("-"));
    }

    @Override
    public void create(String url, Optional<String> user, Path folder, Optional<Path> from, Author author) {
        calls.add("team create " + url + " " + user.orElse("-") + " " + folder + " " + from.map(Path::toString)
                .orElse("-") + " " + author.who());
    }

    @Override
    public void join(String url, Optional<String> user, Path folder, Optional<UUID> project) {
        calls.add("join " + url + " " + user.orElse("-") + " " + folder + " " + project.map(UUID::toString)
                .orElse("-"));
    }

    @Override
    public boolean admit(Path project, String user, TeamRole role) {
        calls.add("admit " + project + " " + user + " " + role.id());
        return true;
    }

    @Override
    public void askForPasswords(PasswordPrompt prompt) {
        // Nobody is asked.
    }
}
