package org.benchleaf.app.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.Refusal;
import org.benchleaf.app.service.NeedReaders;
import org.benchleaf.app.web.route.Request;
import org.benchleaf.catalog.model.ItemRecord;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.content.Wording;
import org.benchleaf.render.page.ItemLine;
import org.benchleaf.render.page.NeedPage;
import org.benchleaf.search.Match;
import org.benchleaf.search.NeedAnswer;
import org.benchleaf.search.NeedQuery;
import org.benchleaf.search.NeedSearch;
import org.benchleaf.search.Why;
import org.benchleaf.search.facet.Facet;
import org.benchleaf.search.names.NameIndex;
import org.benchleaf.search.need.NeedReader;
import org.benchleaf.search.need.NeedReading;
import org.benchleaf.search.need.Understood;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.need.Need;
import org.benchleaf.shared.need.WeighedWish;
import org.benchleaf.shared.need.Wish;

/// `/find?q=WORDS`: a need answered on a page that works without script. What was chosen beside the words comes as
/// `with=FACET:VALUE`, once each; `plant=NAME` asks why a plant is an answer or not; `skip=N` turns pages.
final class NeedPages {
    private static final int PAGE = 20;
    private static final int FARTHEST = 1000;
    private static final int NAMES = 6;
    private static final int LONGEST = 500;
    private static final int CHOICES = 8;

    private final Benchleaf benchleaf;
    private final Wording wording;
    private final NeedSearch search;
    private final NeedReaders readers;
    private final PublicView view;

    NeedPages(Benchleaf benchleaf) {
        this.benchleaf = benchleaf;
        this.wording = benchleaf.wording();
        this.search = benchleaf.needSearch();
        this.readers = new NeedReaders(benchleaf);
        this.view = new PublicView(benchleaf);
        readers.reader(); // the first who asks does not wait for it
    }

    /// Knows the genera and species of the catalog as it is now.
    NeedReader reader() {
        return readers.reader();
    }

    /// What is asked by an address.
    private record Question(String words, Set<String> chosen, String plant, int skip) {
        static Question of(Request request) {
            String words = request.query("q").orElse("").strip();
            String plant = request.query("plant").orElse("").strip();
            int skip;
            try {
                skip = Math.clamp(Integer.parseInt(request.query("skip").orElse("0")), 0, FARTHEST - PAGE);
            } catch (NumberFormatException typed) {
                skip = 0;
            }
            return new Question(
                    words.substring(0, Math.min(LONGEST, words.length())),
                    new LinkedHashSet<>(request.queries("with")),
                    plant.substring(0, Math.min(LONGEST, plant.length())),
                    skip);
        }

        String path(String otherWords, Set<String> otherChosen, int otherSkip) {
            return "/find?q=" + encoded(otherWords)
                    + otherChosen.stream().map(one -> "&with=" + encoded(one)).collect(Collectors.joining())
                    + (otherSkip == 0 ? "" : "&skip=" + otherSkip);
        }

        String without(String words) {
            int at = this.words.indexOf(words);
            String rest =
                    at < 0 ? this.words : this.words.substring(0, at) + " " + this.words.substring(at + words.length());
            return rest.replaceAll("\\s+", " ")
                    .replaceAll("\\s*([,;])(?:\\s*[,;])+", "$1")
                    .replaceAll("^[\\s,;]+|[\\s,;]+$", "");
        }

        private static String encoded(String text) {
            return URLEncoder.encode(text, StandardCharsets.UTF_8);
        }
    }

    NeedPage answer(Request request) {
        Question question = Question.of(request);
        Map<String, Wish> chosen = chosen(question);
        NeedReading read =
                new AskedPrices(view.telling(request)).of(reader().read(question.words(), benchleaf.today()));
        List<WeighedWish> wishes = new ArrayList<>(read.need().wishes());
        chosen.values().stream()
                .map(WeighedWish::of)
                .filter(wish -> !wishes.contains(wish))
                .forEach(wishes::add);
        YearWeek week = YearWeek.of(benchleaf.today());
        NeedQuery query = new NeedQuery(
                new Need(wishes.stream().limit(NeedQuery.MOST_WISHES).toList()), "", week, question.skip(), PAGE);
        Optional<NeedAnswer> answer = wishes.isEmpty() ? Optional.empty() : Optional.of(search.answer(query));
        return new NeedPage(
                question.words(),
                asked(question, read, chosen),
                read.notes().stream()
                        .map(note -> wording.text(
                                "need.note." + note.key(), Map.of("words", note.words(), "read", note.readAs())))
                        .toList(),
                read.others().stream()
                        .map(other -> new NeedPage.Other(other.words(), other.wishes()))
                        .toList(),
                wishes.isEmpty() ? List.of() : read.notUnderstood(),
                names(question, read, wishes.isEmpty()),
                answer.map(found -> new NeedPage.Tally(found.meetAll(), found.missNone(), found.total())),
                answer.map(found -> found(found.matches(), question.skip(), week))
                        .orElse(List.of()),
                why(question, query),
                answer.map(found -> offers(question, read, found)).orElse(List.of()),
                answer.map(found -> narrowings(question, chosen, found)).orElse(List.of()),
                question.skip() == 0
                        ? ""
                        : question.path(question.words(), question.chosen(), Math.max(0, question.skip() - PAGE)),
                answer.filter(found -> question.skip() + PAGE < Math.min(found.total(), FARTHEST))
                        .map(found -> question.path(question.words(), question.chosen(), question.skip() + PAGE))
                        .orElse(""),
                view.shop());
    }

    /// The wishes that were chosen beside the words; what nobody offered is passed over.
    private static Map<String, Wish> chosen(Question question) {
        Map<String, Wish> chosen = new java.util.LinkedHashMap<>();
        for (String text : question.chosen()) {
            for (Facet facet : Facet.USUAL) {
                facet.choices().forEach((value, wish) -> {
                    if (text.equals(facet.term() + ":" + value)) {
                        chosen.put(text, wish);
                    }
                });
            }
        }
        return chosen;
    }

    private List<NeedPage.Asked> asked(Question question, NeedReading read, Map<String, Wish> chosen) {
        List<NeedPage.Asked> asked = new ArrayList<>();
        for (Understood one : read.understood()) {
            asked.add(new NeedPage.Asked(
                    one.words(), one.wish(), question.path(question.without(one.words()), question.chosen(), 0)));
        }
        chosen.forEach((text, wish) -> {
            Set<String> others = new LinkedHashSet<>(question.chosen());
            others.remove(text);
            asked.add(new NeedPage.Asked("", WeighedWish.of(wish), question.path(question.words(), others, 0)));
        });
        return asked;
    }

    /// Words that are no wish may be a name, in whatever spelling.
    private List<NeedPage.Named> names(Question question, NeedReading read, boolean nothingRead) {
        String name = nothingRead ? question.words() : String.join(" ", read.notUnderstood());
        if (name.isBlank()) {
            return List.of();
        }
        NameIndex index = benchleaf.names();
        return index.find(name, NAMES).stream()
                .flatMap(hit -> benchleaf.catalog().plant(hit.plant()).stream()
                        .map(plant -> new NeedPage.Named(
                                plant.name(),
                                hit.matched().equals(plant.name().toString()) ? "" : hit.matched(),
                                path(plant))))
                .toList();
    }

    private static String path(PlantRecord plant) {
        return "/p/" + plant.key();
    }

    private List<NeedPage.Found> found(List<Match> matches, int skip, YearWeek week) {
        List<NeedPage.Found> found = new ArrayList<>();
        for (Match match : matches) {
            found.add(found(match, skip + found.size() + 1, week));
        }
        return found;
    }

    private NeedPage.Found found(Match match, int place, YearWeek week) {
        PlantRecord plant = match.plant();
        return new NeedPage.Found(
                place,
                plant.name(),
                commonName(plant),
                path(plant),
                match.fit().reasons(),
                match.stock().items().stream()
                        .map(item -> item(match, item, week))
                        .toList());
    }

    /// A cultivar without a common name of its own is called as its taxon is.
    private String commonName(PlantRecord plant) {
        return plant.commonName(wording.language())
                .or(() -> plant.taxon()
                        .flatMap(benchleaf.catalog()::plant)
                        .flatMap(taxon -> taxon.commonName(wording.language())))
                .orElse("");
    }

    private static ItemLine item(Match match, ItemRecord item, YearWeek week) {
        return new ItemLine(
                item.key(),
                item.size(),
                item.form(),
                match.stock().availability(item.key(), week),
                item.price(),
                List.of());
    }

    private Optional<NeedPage.Found> why(Question question, NeedQuery query) {
        if (question.plant().isEmpty() || query.need().wishes().isEmpty()) {
            return Optional.empty();
        }
        try {
            PlantRecord plant = benchleaf.plantFinder().find(question.plant());
            Optional<Why> why = search.why(query, plant.key());
            return why.map(told -> found(told.match(), told.place().orElse(0), query.now()));
        } catch (Refusal unknown) {
            // a name that nobody has, or several have: the page then goes without
            return Optional.empty();
        }
    }

    private static List<NeedPage.Offer> offers(Question question, NeedReading read, NeedAnswer answer) {
        List<NeedPage.Offer> offers = new ArrayList<>();
        answer.loosenings()
                .forEach(loosening -> offers.add(new NeedPage.Offer(
                        List.of(), List.of(loosening.wish(), loosening.loosened()), loosening.more(), "")));
        answer.relaxations()
                .forEach(relaxation -> offers.add(new NeedPage.Offer(
                        relaxation.giveUp(),
                        List.of(),
                        relaxation.more(),
                        without(question, read, relaxation.giveUp()))));
        return offers;
    }

    private static String without(Question question, NeedReading read, List<Wish> giveUp) {
        Question left = question;
        for (Wish wish : giveUp) {
            Optional<Understood> said = read.understood().stream()
                    .filter(one -> one.wish().wish().equals(wish))
                    .findFirst();
            if (said.isEmpty()) {
                return "";
            }
            left = new Question(left.without(said.get().words()), left.chosen(), "", 0);
        }
        return left.path(left.words(), left.chosen(), 0);
    }

    private List<NeedPage.Narrowing> narrowings(Question question, Map<String, Wish> chosen, NeedAnswer answer) {
        List<NeedPage.Narrowing> narrowings = new ArrayList<>();
        answer.facets().forEach((facet, counts) -> {
            List<NeedPage.Choice> choices = counts.stream()
                    .filter(count -> !chosen.containsKey(facet.term() + ":" + count.value()))
                    .limit(CHOICES)
                    .map(count -> {
                        Set<String> more = new LinkedHashSet<>(question.chosen());
                        more.add(facet.term() + ":" + count.value());
                        return new NeedPage.Choice(
                                count.value(), count.plants(), question.path(question.words(), more, 0));
                    })
                    .toList();
            if (choices.size() > 1) {
                narrowings.add(new NeedPage.Narrowing(wording.sentence(wording.term(facet)), choices));
            }
        });
        return narrowings;
    }
}
