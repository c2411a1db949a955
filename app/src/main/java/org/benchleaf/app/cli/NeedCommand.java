package org.benchleaf.app.cli;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.NeedSearch;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.need.NeedReader;
import org.benchleaf.shared.measure.YearWeek;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "need",
        mixinStandardHelpOptions = true,
        description = "Answers a landscape need: plants ranked, each with one reason a wish and its stock now.")
final class NeedCommand implements Callable<Integer> {
    private final Console console;
    private final Clock clock;

    @Mixin
    private final WorkspaceOption workspace = new WorkspaceOption();

    @Mixin
    private final NeedParameters need = new NeedParameters();

    @Parameters(
            arity = "0..*",
            paramLabel = "WORDS",
            description = "the need in plain words, for example \"fall color zone 6 shade under 5 ft, 40 in #3\"")
    private List<String> words = List.of();

    @Mixin
    private final ManyNeeds many = new ManyNeeds();

    NeedCommand(Console console, Clock clock) {
        this.console = console;
        this.clock = clock;
    }

    @Override
    public Integer call() {
        List<String> sentences = many.sentences(words);
        try (Benchleaf benchleaf = Benchleaf.open(workspace.folder(), clock)) {
            NeedReader reader = need.reader(benchleaf);
            NeedSearch search = benchleaf.needSearch();
            AnswerCsv sheet = new AnswerCsv(need.wording(benchleaf));
            if (many.csv()) {
                console.out().println(sheet.headings());
            }
            for (String sentence : sentences) {
                NeedParameters.Asked asked = need.asked(benchleaf, reader, sentence, Facet.USUAL);
                boolean unread = asked.wishes().isEmpty() && !sentence.isBlank();
                NeedAnswer answer =
                        unread ? NeedAnswer.toNothing(benchleaf.catalog().revision()) : search.answer(asked.query());
                write(benchleaf, sentence, asked, answer, sheet);
            }
        }
        return ErrorReport.DONE;
    }

    private void write(
            Benchleaf benchleaf, String sentence, NeedParameters.Asked asked, NeedAnswer answer, AnswerCsv sheet) {
        YearWeek week = asked.query().now();
        if (many.csv()) {
            sheet.lines(sentence, asked.query().skip(), answer, week, benchleaf.now())
                    .forEach(console.out()::println);
        } else if (many.json()) {
            AnswerJson writer = new AnswerJson(need.wording(benchleaf), benchleaf.settings(), !many.batch());
            console.out()
                    .println(writer.text(
                            sentence, asked.reading(), asked.wishes(), answer, week, Optional.of(benchleaf.now())));
        } else {
            if (many.batch()) {
                console.out().println("## " + sentence);
            }
            new AnswerText(need.wording(benchleaf))
                    .write(
                            asked.reading(),
                            asked.wishes(),
                            answer,
                            asked.query().skip(),
                            week,
                            console.out());
            console.out().println();
            console.out().println(new StockWords(need.wording(benchleaf), clock.getZone()).asOf(benchleaf.now()));
        }
    }
}
