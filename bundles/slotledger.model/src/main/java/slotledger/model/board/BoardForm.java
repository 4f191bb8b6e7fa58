package slotledger.model.board;

/** What kind of computer the board sits in; decides cautions and how a technician reaches the slots. */
public enum BoardForm {
    DESKTOP("desktop"),
    SMALL_DESKTOP("small desktop"),
    ALL_IN_ONE("all-in-one"),
    NOTEBOOK("notebook"),
    WORKSTATION("workstation"),
    SERVER("server"),
    OTHER("other");

    private final String text;

    BoardForm(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
