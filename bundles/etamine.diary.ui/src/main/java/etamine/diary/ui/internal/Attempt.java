package etamine.diary.ui.internal;

/** What becomes of something typed. */
sealed interface Attempt {

    /**
     * It can be saved.
     *
     * @param label what is saved
     * @param work saves it; not on the window's thread
     */
    record Save(String label, Runnable work) implements Attempt {}

    /**
     * It cannot.
     *
     * @param sentence what to do
     */
    record Refused(String sentence) implements Attempt {}
}
