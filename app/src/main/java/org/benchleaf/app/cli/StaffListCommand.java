package org.benchleaf.app.cli;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.benchleaf.app.Benchleaf;
import org.benchleaf.app.ErrorReport;
import org.benchleaf.catalog.accounts.StaffMember;
import org.benchleaf.content.Wording;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

@Command(name = "list", mixinStandardHelpOptions = true, description = "Says who may sign in, and as what.")
final class StaffListCommand extends WorkspaceCommand {
    @Option(names = "--json", description = "answer in JSON")
    private boolean json;

    StaffListCommand(Console console, Clock clock) {
        super(console, clock);
    }

    @Override
    int run(Benchleaf benchleaf) {
        List<StaffMember> staff = benchleaf.accounts().staff();
        if (json) {
            console().out().println(json(staff));
        } else if (staff.isEmpty()) {
            console().out().println(benchleaf.wording().text("staff.none"));
        } else {
            staff.forEach(member -> console().out().println(line(member, benchleaf.wording())));
        }
        return ErrorReport.DONE;
    }

    private String line(StaffMember member, Wording wording) {
        String since = wording.date(LocalDate.ofInstant(member.since(), clock().getZone()));
        return wording.text(
                member.active() ? "staff.line" : "staff.line.left",
                Map.of("name", member.name(), "role", TierOption.post(member, wording), "since", since));
    }

    private static String json(List<StaffMember> staff) {
        ObjectMapper mapper = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
        ArrayNode all = mapper.createArrayNode();
        for (StaffMember member : staff) {
            ObjectNode one = all.addObject()
                    .put("name", member.name())
                    .put("role", member.role().term())
                    .put("active", member.active())
                    .put("since", member.since().toString());
            member.tier().ifPresent(tier -> one.put("tier", tier));
        }
        return all.toPrettyString();
    }
}
