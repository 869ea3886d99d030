package etamine.recipes.ui.internal;

import etamine.base.Problem;
import etamine.recipes.PlacedProblem;
import etamine.recipes.Trust;
import java.util.List;

/**
 * What looking a recipe over has shown.
 *
 * @param recipe its id
 * @param problems what is wrong or doubtful, with places
 * @param trust how far it is to be trusted
 * @param balance what goes in and what comes out, in a sentence
 */
record Checked(String recipe, List<PlacedProblem> problems, Trust trust, String balance) {
    private static final int SHOWN = 6;

    Checked {
        problems = List.copyOf(problems);
    }

    List<String> pointers() {
        return problems.stream().map(PlacedProblem::pointer).toList();
    }

    /** The problems as links by number, the first few of many. */
    String links() {
        StringBuilder text = new StringBuilder();
        for (int at = 0; at < Math.min(SHOWN, problems.size()); at++) {
            Problem problem = problems.get(at).problem();
            text.append(at == 0 ? "" : "\n")
                    .append("<a href=\"")
                    .append(at)
                    .append("\">")
                    .append(place(problems.get(at).pointer()))
                    .append("</a>  ")
                    .append(problem.text()
                            .replace("&", "&&")
                            .replace('<', '\u2039')
                            .replace('>', '\u203a'));
        }
        int more = problems.size() - SHOWN;
        return more > 0 ? text + "\nand " + more + " more" : text.toString();
    }

    /** The place of a problem in the words of the form. */
    static String place(String pointer) {
        String[] parts = pointer.split("/");
        String part = parts.length > 1 ? parts[1] : "";
        String row = parts.length > 2 && parts[2].matches("[0-9]{1,8}") ? " " + (Integer.parseInt(parts[2]) + 1) : "";
        return switch (part) {
            case "uses" -> "Line" + row;
            case "makes" -> "Made" + row;
            case "steps" -> "Step" + row;
            case "drinks" -> "Drink" + row;
            case "portion" -> "Portion";
            case "reducesTo" -> "Reduces to";
            case "absorbs" -> "Takes up water";
            case "menuPrice" -> "Menu price";
            default -> "Recipe";
        };
    }

    /** How far it is to be trusted, as a word with what is missing. */
    String standing() {
        String tries = trust.tries() + (trust.tries() == 1 ? " good try" : " good tries");
        String word = switch (trust.level()) {
            case DRAFT -> "Draft";
            case TESTED -> "Tested, " + tries;
            case STANDARDISED -> "Standardised, " + tries;
        };
        return trust.missing().isEmpty()
                ? word + "."
                : word + ". To be standardised: " + String.join(" ", trust.missing());
    }
}
