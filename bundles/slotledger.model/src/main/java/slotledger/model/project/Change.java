package slotledger.model.project;

import java.time.LocalDate;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;

/** What an entry of the journal does to a project. */
public sealed interface Change {

    /**
     * What it is about. Two people who change the same thing at once must talk to each other; changes that have no
     * subject in common just both hold.
     */
    default Set<String> subjects() {
        return Set.of();
    }

    /** The project begins. */
    record Created(String title) implements Change {
        public Created {
            Objects.requireNonNull(title, "title");
        }
    }

    /**
     * Files were brought in; each part that is named is replaced as a whole.
     *
     * @param parts the files of each part; none means that the part is taken out
     */
    record Imported(Map<Part, List<Original>> parts) implements Change {
        public Imported {
            Map<Part, List<Original>> copy = new EnumMap<>(Part.class);
            parts.forEach((part, files) -> copy.put(part, List.copyOf(files)));
            parts = Collections.unmodifiableMap(copy);
            if (parts.isEmpty()) {
                throw new IllegalArgumentException("An import must bring at least one part.");
            }
        }

        @Override
        public Set<String> subjects() {
            return parts.keySet().stream().map(part -> "part " + part.id()).collect(Collectors.toSet());
        }
    }

    /**
     * A plan was made.
     *
     * @param file  plan.json as it was written
     * @param title what it is a plan of, in words
     * @param date  the day it was made for
     * @param basis number of the last entry that the planner knew
     */
    record Planned(Original file, String title, LocalDate date, long basis) implements Change {
        public Planned {
            Objects.requireNonNull(file, "file");
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(date, "date");
        }
    }

    /** Somebody decided something that holds whatever is imported later. */
    record Decided(Decision decision) implements Change {
        public Decided {
            Objects.requireNonNull(decision, "decision");
        }

        @Override
        public Set<String> subjects() {
            return Set.of(decision.thing());
        }
    }

    /** An earlier entry no longer holds. */
    record TakenBack(long entry) implements Change {

        @Override
        public Set<String> subjects() {
            return Set.of("entry " + entry);
        }
    }

    /** An entry that was taken back holds again. */
    record Restored(long entry) implements Change {

        @Override
        public Set<String> subjects() {
            return Set.of("entry " + entry);
        }
    }

    /**
     * The coordinator made the rounds of a plan anew.
     *
     * @param plan   number of the plan they carry out, counted from 1
     * @param rounds all of them, in the order of work; none means that the plan has none any more
     */
    record Rounds(int plan, List<Round> rounds) implements Change {
        public Rounds {
            rounds = List.copyOf(rounds);
            for (Round round : rounds) {
                if (round.plan() != plan) {
                    throw new IllegalArgumentException("The plan (%d) of round %s must be that of all rounds (%d)."
                            .formatted(round.plan(), round.id(), plan));
                }
            }
        }

        @Override
        public Set<String> subjects() {
            return Set.of("rounds of plan " + plan);
        }
    }

    /**
     * Something happened to jobs.
     *
     * @param events in the order they were recorded, at least one
     */
    record Worked(List<JobEvent> events) implements Change {
        public Worked {
            events = List.copyOf(events);
            if (events.isEmpty()) {
                throw new IllegalArgumentException("An entry about work must say what happened.");
            }
        }

        /** What is sent twice collides with itself; two people may say different things of one job. */
        @Override
        public Set<String> subjects() {
            return events.stream().map(event -> "event " + event.id()).collect(Collectors.toUnmodifiableSet());
        }
    }

    /** Something happened to the order of a plan. */
    record Traded(TradeEvent event) implements Change {
        public Traded {
            Objects.requireNonNull(event, "event");
        }

        @Override
        public Set<String> subjects() {
            return Set.of(event.subject());
        }
    }
}
