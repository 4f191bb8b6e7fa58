package slotledger.app.internal;

import java.nio.file.Path;
import java.util.Optional;
import java.util.UUID;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.TeamDesk;
import slotledger.model.project.Author;
import slotledger.model.project.PasswordPrompt;
import slotledger.model.project.TeamRole;
import slotledger.store.ProjectStores;
import slotledger.store.SharedProjects;
import slotledger.store.StoreException;
import slotledger.store.TeamPlace;

/** Hands a team's wishes to the store. */
final class DefaultTeamDesk implements TeamDesk {

    private final DefaultProjectDesk projects;
    private final ProjectStores stores;

    DefaultTeamDesk(DefaultProjectDesk projects, ProjectStores stores) {
        this.projects = projects;
        this.stores = stores;
    }

    /** What is done with the projects of a database. */
    @FunctionalInterface
    private interface Work<T> {
        T on(SharedProjects shared) throws StoreException;
    }

    @Override
    public void prepare(String url, Optional<String> user) throws DeskException {
        TeamPlace place = place(url, user);
        on(shared -> {
            shared.prepare(place);
            return null;
        });
    }

    @Override
    public void create(String url, Optional<String> user, Path folder, Optional<Path> from, Author author)
            throws DeskException {
        TeamPlace place = place(url, user);
        boolean history = from.isPresent() && projects.isProject(from.get());
        var files = history ? null : DefaultProjectDesk.files(from);
        on(shared -> {
            if (history) {
                shared.share(place, folder, from.get());
            } else {
                shared.create(place, folder, DefaultProjectDesk.title(folder, from), files, author);
            }
            return null;
        });
    }

    @Override
    public void join(String url, Optional<String> user, Path folder, Optional<UUID> project) throws DeskException {
        TeamPlace place = place(url, user);
        on(shared -> {
            shared.join(place, folder, project);
            return null;
        });
    }

    @Override
    public boolean admit(Path project, String user, TeamRole role) throws DeskException {
        return on(shared -> shared.admit(project, user, role));
    }

    @Override
    public void askForPasswords(PasswordPrompt prompt) {
        stores.askForPasswords(prompt);
    }

    private <T> T on(Work<T> work) throws DeskException {
        try {
            return work.on(stores.shared());
        } catch (StoreException problem) {
            throw DefaultProjectDesk.said(problem);
        }
    }

    private static TeamPlace place(String url, Optional<String> user) throws DeskException {
        try {
            return new TeamPlace(url, user);
        } catch (IllegalArgumentException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }
}
