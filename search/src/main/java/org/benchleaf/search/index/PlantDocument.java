package org.benchleaf.search.index;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.apache.lucene.document.BinaryDocValuesField;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.SortedDocValuesField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.Term;
import org.apache.lucene.util.BytesRef;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.PlantRecord;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.search.fit.Merit;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.name.BotanicalName;

/// What the index holds of one plant, and the names of its fields.
final class PlantDocument {
    static final String KEY = "key";
    /// Name as sorted, a zero, the key: sorts plants as lists do, and no two alike.
    static final String ORDER = "order";

    /// What it is worth whatever is asked.
    static final String MERIT = "merit";

    static final String WORD = "word";
    static final String WHOLE = "whole";
    /// All names, one a line, each as stored.
    static final String NAME = "name";
    static final char BEFORE_KEY = '\0';

    private PlantDocument() {}

    static Term term(PlantKey key) {
        return new Term(KEY, key.text());
    }

    static Document of(PlantRecord plant) {
        Document document = new Document();
        document.add(new StringField(KEY, plant.key().text(), Field.Store.NO));
        String order = plant.name().sortKey() + BEFORE_KEY + plant.key();
        document.add(new SortedDocValuesField(ORDER, new BytesRef(order)));
        document.add(new NumericDocValuesField(MERIT, Merit.of(plant)));
        for (Basis basis : Basis.values()) {
            basis.textOf(plant)
                    .ifPresent(text -> document.add(new SortedDocValuesField(basis.field(), new BytesRef(text))));
        }
        Set<String> words = new LinkedHashSet<>();
        Set<String> wholes = new LinkedHashSet<>();
        StringJoiner lines = new StringJoiner("\n");
        for (WrittenName name : names(plant)) {
            List<String> folded = FoldedName.words(name.text());
            words.addAll(folded);
            wholes.add(whole(name.kind(), String.join(" ", folded)));
            lines.add(name.stored());
        }
        document.add(new BinaryDocValuesField(NAME, new BytesRef(lines.toString())));
        words.forEach(word -> document.add(new StringField(WORD, word, Field.Store.NO)));
        wholes.forEach(whole -> document.add(new StringField(WHOLE, whole, Field.Store.NO)));
        return document;
    }

    /// A whole name, folded, with its kind: `A acer rubrum`.
    static String whole(WrittenName.Kind kind, String folded) {
        return new WrittenName(kind, folded).stored();
    }

    static PlantKey keyIn(String order) {
        return new PlantKey(order.substring(order.indexOf(BEFORE_KEY) + 1));
    }

    /// All names by which a plant is found, the accepted one first.
    static Set<WrittenName> names(PlantRecord plant) {
        List<WrittenName> names = new ArrayList<>();
        BotanicalName name = plant.name();
        names.add(new WrittenName(WrittenName.Kind.ACCEPTED, name.toString()));
        for (Optional<String> selling : List.of(name.tradeDesignation(), name.cultivar())) {
            selling.ifPresent(text -> {
                names.add(new WrittenName(WrittenName.Kind.COMMON, name.genus() + " " + text));
                names.add(new WrittenName(WrittenName.Kind.COMMON, text));
            });
        }
        for (Synonym synonym : plant.synonyms()) {
            names.add(new WrittenName(WrittenName.Kind.SYNONYM, synonym.text()));
        }
        for (CommonName common : plant.commonNames()) {
            names.add(new WrittenName(WrittenName.Kind.COMMON, common.text()));
        }
        return new LinkedHashSet<>(names);
    }
}
