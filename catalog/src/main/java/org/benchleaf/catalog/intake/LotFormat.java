package org.benchleaf.catalog.intake;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Currency;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.shared.code.Gtin;
import org.benchleaf.shared.code.PlantKey;
import org.benchleaf.shared.measure.Money;
import org.benchleaf.shared.measure.YearWeek;
import org.benchleaf.shared.name.BotanicalName;
import org.benchleaf.shared.stock.Condition;
import org.benchleaf.shared.stock.ItemForm;
import org.benchleaf.shared.stock.StockSize;

/// Drafts of lots on disk.
final class LotFormat implements SpoolFormat<LotDraft> {
    @Override
    public void write(LotDraft draft, DataOutput out) throws IOException {
        SpoolFormat.place(draft.place(), out);
        SpoolFormat.text(draft.lot(), out);
        NameFormat.write(draft.plant(), out);
        NameFormat.write(draft.name(), out);
        SpoolFormat.text(draft.size().toString(), out);
        out.writeByte(draft.form().ordinal());
        SpoolFormat.text(draft.where(), out);
        out.writeInt(draft.count());
        SpoolFormat.optional(draft.ready().map(YearWeek::toString), out);
        out.writeBoolean(draft.price().isPresent());
        if (draft.price().isPresent()) {
            out.writeLong(draft.price().get().minor());
            out.writeUTF(draft.price().get().currency().getCurrencyCode());
        }
        out.writeInt(draft.conditions().size());
        for (Condition condition : draft.conditions()) {
            out.writeByte(condition.ordinal());
        }
        SpoolFormat.optional(draft.seenOn().map(LocalDate::toString), out);
        SpoolFormat.optional(draft.gtin().map(Gtin::toString), out);
    }

    @Override
    public LotDraft read(DataInput in) throws IOException {
        Place place = SpoolFormat.place(in);
        String lot = SpoolFormat.text(in);
        Optional<PlantKey> plant = NameFormat.key(in);
        BotanicalName name = NameFormat.read(in);
        StockSize size = StockSize.read(SpoolFormat.text(in)).orThrow();
        ItemForm form = ItemForm.values()[in.readByte()];
        String where = SpoolFormat.text(in);
        int count = in.readInt();
        Optional<YearWeek> ready =
                SpoolFormat.optional(in).map(text -> YearWeek.read(text).orThrow());
        Optional<Money> price = in.readBoolean()
                ? Optional.of(new Money(in.readLong(), Currency.getInstance(in.readUTF())))
                : Optional.empty();
        Set<Condition> conditions = EnumSet.noneOf(Condition.class);
        for (int left = in.readInt(); left > 0; left--) {
            conditions.add(Condition.values()[in.readByte()]);
        }
        return new LotDraft(
                place,
                lot,
                plant,
                name,
                size,
                form,
                where,
                count,
                ready,
                price,
                Set.copyOf(conditions),
                SpoolFormat.optional(in).map(LocalDate::parse),
                SpoolFormat.optional(in).map(Gtin::new));
    }
}
