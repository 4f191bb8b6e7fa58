package slotledger.cli.internal;

/** What a command ends with; printed by "slotledger exit-codes". */
enum ExitCode {
    OK(0, "done; nothing to complain of"),
    DIFFERS(1, "prove: not every machine ended as planned; check, explain: something blocks or could not be read; "
            + "label: not all of it was understood; firmware: something is damaged or contradicts itself; "
            + "reconcile: sources differ; draft: machines of one model differ, or a model could not be drafted"),
    USAGE(2, "unknown command or option"),
    INPUT(65, "a file or text is missing, unreadable or not what it should be"),
    AWAY(69, "the database of a team's project doesn't answer"),
    BROKEN(70, "a fault in Slotledger itself; please report what is printed"),
    EXISTS(73, "files would be replaced and nobody said --force"),
    OUTPUT(74, "a file can't be written"),
    PLAN(75, "no plan can be made"),
    DENIED(77, "the database of a team's project doesn't let you in, or your role may not do that"),
    CANCELLED(130, "stopped by the user; nothing was written");

    private final int number;
    private final String text;

    ExitCode(int number, String text) {
        this.number = number;
        this.text = text;
    }

    int number() {
        return number;
    }

    String text() {
        return text;
    }
}
