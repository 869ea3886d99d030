package etamine.base.verb;

/** How a verb ended, with the console's exit status. */
public enum Outcome {
    /** Done. */
    DONE(0),
    /** Done, and there is something to look at: checks found problems, orders were left short. */
    LOOK(1),
    /** The call was wrong. */
    WRONG_CALL(2),
    /** The input was rejected; nothing was written. */
    REJECTED(3);

    private final int status;

    Outcome(int status) {
        this.status = status;
    }

    /** The process exit status. */
    public int status() {
        return status;
    }
}
