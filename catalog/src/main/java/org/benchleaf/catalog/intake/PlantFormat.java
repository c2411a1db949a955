package org.benchleaf.catalog.intake;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.catalog.model.Attribute;
import org.benchleaf.catalog.model.Attributes;
import org.benchleaf.catalog.model.CommonName;
import org.benchleaf.catalog.model.Fact;
import org.benchleaf.catalog.model.Synonym;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.fact.Source;
import org.benchleaf.shared.name.BotanicalName;

/// Drafts of plants on disk; facts as the store writes them.
final class PlantFormat implements SpoolFormat<PlantDraft> {
    /// Texts of facts whose values are remembered: a list says `full sun` in every second row.
    private static final int MOST_REMEMBERED = 4_096;

    private record Stated(String attribute, String text) {}

    private final Map<Stated, Object> values = new ConcurrentHashMap<>();

    @Override
    public void write(PlantDraft draft, DataOutput out) throws IOException {
        SpoolFormat.place(draft.place(), out);
        NameFormat.write(draft.key(), out);
        NameFormat.write(draft.name(), out);
        out.writeInt(draft.commonNames().size());
        for (CommonName name : draft.commonNames()) {
            SpoolFormat.text(name.text(), out);
            SpoolFormat.text(name.language().toLanguageTag(), out);
        }
        out.writeInt(draft.synonyms().size());
        for (Synonym synonym : draft.synonyms()) {
            SpoolFormat.text(synonym.text(), out);
            SpoolFormat.text(synonym.source().text(), out);
        }
        out.writeInt(draft.facts().size());
        for (Fact<?> fact : draft.facts()) {
            SpoolFormat.text(fact.attribute().id(), out);
            SpoolFormat.text(fact.text(), out);
            SpoolFormat.text(fact.source().text(), out);
        }
        out.writeByte(draft.rank().map(rank -> rank.ordinal() + 1).orElse(0));
    }

    @Override
    public PlantDraft read(DataInput in) throws IOException {
        Place place = SpoolFormat.place(in);
        Optional<PlantKey> key = NameFormat.key(in);
        BotanicalName name = NameFormat.read(in);
        List<CommonName> common = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            common.add(new CommonName(SpoolFormat.text(in), Locale.forLanguageTag(SpoolFormat.text(in))));
        }
        List<Synonym> synonyms = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            synonyms.add(new Synonym(SpoolFormat.text(in), new Source(SpoolFormat.text(in))));
        }
        List<Fact<?>> facts = new ArrayList<>();
        for (int count = in.readInt(); count > 0; count--) {
            String id = SpoolFormat.text(in);
            Attribute<?> attribute = Attributes.byId(id).orElseThrow();
            facts.add(fact(attribute, SpoolFormat.text(in), new Source(SpoolFormat.text(in))));
        }
        int rank = in.readByte();
        Optional<ImportPlan.Rank> ranked =
                rank == 0 ? Optional.empty() : Optional.of(ImportPlan.Rank.values()[rank - 1]);
        return new PlantDraft(place, key, name, common, synonyms, facts, ranked);
    }

    private <T> Fact<T> fact(Attribute<T> attribute, String text, Source source) {
        Stated stated = new Stated(attribute.id(), text);
        @SuppressWarnings("unchecked") // remembered under its own attribute
        T known = (T) values.get(stated);
        T value = known == null ? attribute.codec().read(text).orThrow() : known;
        if (known == null && values.size() < MOST_REMEMBERED) {
            values.put(stated, value);
        }
        return new Fact<>(attribute, value, source, false);
    }
}
