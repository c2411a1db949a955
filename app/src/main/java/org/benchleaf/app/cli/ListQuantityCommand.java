package org.benchleaf.app.cli;

import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.app.service.PlantAmount;
import org.benchleaf.content.ContentPack;
import org.benchleaf.content.Wording;
import org.benchleaf.shared.measure.LengthStyle;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

@Command(
        name = "quantity",
        mixinStandardHelpOptions = true,
        description = "Works out how many plants a bed or a row takes; rounded up to whole plants.")
final class ListQuantityCommand implements Callable<Integer> {
    private final Console console;

    @Mixin
    private final AmountOptions amount = new AmountOptions();

    @Option(names = "--json", description = "for machines")
    private boolean json;

    ListQuantityCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Wording words = Wording.open(ContentPack.builtIn(), Locale.ENGLISH, LengthStyle.IMPERIAL);
        PlantAmount many = amount.amount(words);
        console.out()
                .println(
                        json
                                ? "{\"plants\": " + many.plants() + "}"
                                : words.text(
                                        "list.quantity",
                                        Map.of("count", words.count(many.plants()), "worked", many.worked())));
        return ErrorReport.DONE;
    }
}
