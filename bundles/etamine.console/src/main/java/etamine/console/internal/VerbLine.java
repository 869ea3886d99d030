package etamine.console.internal;

import etamine.base.verb.VerbException;
import etamine.base.verb.VerbUsage;
import etamine.base.verb.VerbUsage.Option;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/**
 * What was typed after a verb, taken apart by the verb's usage.
 *
 * @param arguments what stands by itself
 * @param options what was given with dashes; flags have the value {@code true}
 */
record VerbLine(List<String> arguments, Map<String, String> options) {

    static VerbLine of(VerbUsage usage, List<String> words) throws VerbException {
        try {
            ParseResult parsed = parser(usage).parseArgs(words.toArray(new String[0]));
            VerbLine line = new VerbLine(parsed.matchedPositionalValue(0, List.<String>of()), options(usage, parsed));
            line.count(usage);
            return line;
        } catch (CommandLine.UnmatchedArgumentException e) {
            throw wrong(usage, usage.name() + " does not know " + String.join(" ", e.getUnmatched()) + ".");
        } catch (CommandLine.OverwrittenOptionException e) {
            throw wrong(usage, "An option stands twice; leave one of them out.");
        } catch (CommandLine.ParameterException e) {
            throw wrong(usage, e.getMessage() + ".");
        }
    }

    private static CommandLine parser(VerbUsage usage) {
        CommandSpec spec = CommandSpec.create().name(usage.name());
        for (Option option : usage.options()) {
            boolean flag = option.value().isEmpty();
            spec.addOption(OptionSpec.builder(option.name())
                    .arity(flag ? "0" : "1")
                    .type(flag ? boolean.class : String.class)
                    .paramLabel(option.value())
                    .build());
        }
        spec.addPositional(PositionalParamSpec.builder()
                .index("0..*")
                .arity("0..*")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .build());
        return new CommandLine(spec).setExpandAtFiles(false).setInterpolateVariables(false);
    }

    private static Map<String, String> options(VerbUsage usage, ParseResult parsed) {
        Map<String, String> options = new LinkedHashMap<>();
        for (Option option : usage.options()) {
            if (parsed.hasMatchedOption(option.name())) {
                options.put(option.name(), String.valueOf((Object) parsed.matchedOptionValue(option.name(), "")));
            }
        }
        return options;
    }

    private void count(VerbUsage usage) throws VerbException {
        List<String> wanted = usage.arguments();
        long least =
                wanted.stream().filter(argument -> !argument.startsWith("[")).count();
        boolean many = wanted.stream().anyMatch(argument -> argument.contains("..."));
        if (arguments.size() < least) {
            throw wrong(usage, usage.name() + " needs " + bare(wanted.get(arguments.size())) + ".");
        }
        if (!many && arguments.size() > wanted.size()) {
            throw wrong(usage, usage.name() + " does not take " + arguments.get(wanted.size()) + ".");
        }
    }

    private static String bare(String argument) {
        return argument.replaceAll("[\\[\\].]", "");
    }

    private static VerbException wrong(VerbUsage usage, String what) {
        return VerbException.wrongCall(what + " Call: " + HelpPage.call(usage));
    }
}
