package org.benchleaf.catalog.intake;

import java.io.DataInput;
import java.io.DataOutput;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.benchleaf.shared.Problem;

/// Findings on disk.
final class FindingFormat implements SpoolFormat<Finding> {
    @Override
    public void write(Finding finding, DataOutput out) throws IOException {
        SpoolFormat.place(finding.place(), out);
        SpoolFormat.text(finding.problem().key(), out);
        out.writeInt(finding.problem().details().size());
        for (Map.Entry<String, String> detail : finding.problem().details().entrySet()) {
            SpoolFormat.text(detail.getKey(), out);
            SpoolFormat.text(detail.getValue(), out);
        }
        out.writeByte(finding.outcome().ordinal());
    }

    @Override
    public Finding read(DataInput in) throws IOException {
        Place place = SpoolFormat.place(in);
        String key = SpoolFormat.text(in);
        Map<String, String> details = new LinkedHashMap<>();
        for (int count = in.readInt(); count > 0; count--) {
            details.put(SpoolFormat.text(in), SpoolFormat.text(in));
        }
        return new Finding(place, new Problem(key, details), Finding.Outcome.values()[in.readByte()]);
    }
}
