package etamine.recipes.internal.line;

import etamine.kitchen.item.Item;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Names that differ from what was typed by a slip of the fingers: a letter too many, too few, another, or two swapped.
 * They are kept by their first letter, which is seldom the wrong one.
 */
final class NearNames {
    private static final int SHORT = 5;
    private static final int LONGEST = 40;

    private final Collection<Item> items;
    private final Set<String> hidden;
    private @Nullable Map<Character, List<Form>> byFirst;

    private record Form(String plain, String name, String item) {}

    /** Of these items, looked through when the first slip is made. */
    NearNames(Collection<Item> items, Set<String> hidden) {
        this.items = items;
        this.hidden = hidden;
    }

    private synchronized Map<Character, List<Form>> byFirst() {
        Map<Character, List<Form>> forms = byFirst;
        if (forms == null) {
            forms = byFirst(items);
            byFirst = forms;
        }
        return forms;
    }

    private Map<Character, List<Form>> byFirst(Collection<Item> some) {
        return some.stream()
                .filter(item -> !hidden.contains(item.id()))
                .flatMap(NearNames::forms)
                .filter(form -> !form.plain.isEmpty() && form.plain.length() <= LONGEST)
                .collect(Collectors.groupingBy(form -> form.plain.charAt(0)));
    }

    /** The names once some items have gone and others have come; all of them are given too. */
    synchronized NearNames with(Collection<Item> gone, Collection<Item> come, Collection<Item> all) {
        NearNames fresh = new NearNames(all, hidden);
        Map<Character, List<Form>> known = byFirst;
        if (known != null) {
            Map<Character, List<Form>> forms = new HashMap<>(known);
            byFirst(gone).forEach((first, some) -> forms.merge(first, some, NearNames::without));
            byFirst(come).forEach((first, some) -> forms.merge(first, some, NearNames::and));
            fresh.byFirst = forms;
        }
        return fresh;
    }

    private static List<Form> without(List<Form> forms, List<Form> gone) {
        Set<Form> left = new HashSet<>(gone);
        return forms.stream().filter(form -> !left.contains(form)).toList();
    }

    private static List<Form> and(List<Form> forms, List<Form> come) {
        return Stream.concat(forms.stream(), come.stream()).toList();
    }

    /** The whole name, the part before its comma, and each longer word of it. */
    private static Stream<Form> forms(Item item) {
        String plain = ItemNames.plain(item.name());
        Set<String> forms = new LinkedHashSet<>(List.of(plain));
        int comma = plain.indexOf(',');
        if (comma > 0) {
            forms.add(plain.substring(0, comma));
        }
        for (String word : plain.split("[^\\p{L}\\p{N}]+")) {
            if (word.length() >= SHORT) {
                forms.add(word);
            }
        }
        return forms.stream().map(form -> new Form(form, item.name(), item.id()));
    }

    /** The names within two slips of a text, one of a short text; nearest first. */
    Stream<String> to(String plain) {
        if (plain.length() < 3 || plain.length() > LONGEST) {
            return Stream.empty();
        }
        int most = plain.length() <= SHORT ? 1 : 2;
        record Hit(String name, int slips) {}
        return byFirst().getOrDefault(plain.charAt(0), List.of()).stream()
                .filter(form -> Math.abs(form.plain.length() - plain.length()) <= most)
                .map(form -> new Hit(form.name, slips(form.plain, plain, most)))
                .filter(hit -> hit.slips <= most)
                .sorted(Comparator.comparingInt(Hit::slips).thenComparing(Hit::name))
                .map(Hit::name);
    }

    /** How many slips lie between two texts; more than {@code most} as soon as that is certain. */
    static int slips(String left, String right, int most) {
        int[] before = new int[right.length() + 1];
        int[] row = new int[right.length() + 1];
        int[] next = new int[right.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= left.length(); i++) {
            next[0] = i;
            int least = i;
            for (int j = 1; j <= right.length(); j++) {
                int same = left.charAt(i - 1) == right.charAt(j - 1) ? 0 : 1;
                next[j] = Math.min(Math.min(row[j] + 1, next[j - 1] + 1), row[j - 1] + same);
                if (i > 1 && j > 1 && swapped(left, i, right, j)) {
                    next[j] = Math.min(next[j], before[j - 2] + 1);
                }
                least = Math.min(least, next[j]);
            }
            if (least > most) {
                return most + 1;
            }
            int[] spare = before;
            before = row;
            row = next;
            next = spare;
        }
        return row[right.length()];
    }

    private static boolean swapped(String left, int i, String right, int j) {
        return left.charAt(i - 1) == right.charAt(j - 2) && left.charAt(i - 2) == right.charAt(j - 1);
    }
}
