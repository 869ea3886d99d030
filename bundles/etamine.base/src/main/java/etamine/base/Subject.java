package etamine.base;

/**
 * Something that a station can show, named without knowing who shows it.
 *
 * @param kind the word for it, such as {@code item}, {@code recipe}, {@code supplier}, {@code order}
 * @param id its identifier within that kind
 */
public record Subject(String kind, String id) {

    @Override
    public String toString() {
        return kind + "/" + id;
    }
}
