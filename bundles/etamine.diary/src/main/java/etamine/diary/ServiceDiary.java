package etamine.diary;

import etamine.kitchen.covers.Diary;
import etamine.kitchen.covers.WrittenUse;
import etamine.measures.Ratio;
import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalInt;
import org.osgi.annotation.versioning.ProviderType;

/**
 * Writes in the diary. Thread-safe; each call is one transaction, durable when it returns, and fails with
 * {@link etamine.storage.BookException} as a whole. Not to be called on the window's thread.
 */
@ProviderType
public interface ServiceDiary extends Diary {

    /** Sets the covers of these days in one transaction; an empty number takes the day out of the diary again. */
    void setCovers(Map<LocalDate, OptionalInt> covers);

    /** Says how many portions of a recipe one cover takes; not negative. */
    void setMix(String recipe, Ratio perCover);

    /** Takes a recipe out of the menu mix. */
    void removeMix(String recipe);

    /** States the expected use of an item on a day outright. */
    void setUse(WrittenUse use);

    /** Takes such a statement back. */
    void removeUse(LocalDate date, String item);

    /** Notes how many portions of a recipe were sold on a day in all; what was noted before is corrected to it. */
    void setSold(LocalDate date, String recipe, long sold);
}
