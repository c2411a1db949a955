package org.benchleaf.app.cli;

import java.time.Clock;
import org.benchleaf.shared.stock.StockSize;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/// The command line as a whole.
@Command(
        name = "benchleaf",
        mixinStandardHelpOptions = true,
        version = "Benchleaf 0.1.0",
        description =
                "Puts the right plants, correctly named and truthfully described, in front of the right customer.",
        synopsisSubcommandLabel = "COMMAND")
public final class RootCommand implements Runnable {
    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli before anything runs
    private CommandSpec spec;

    RootCommand() {}

    /// The commands, each with what it needs.
    public static CommandLine commandLine(Console console, Clock clock, String... words) {
        CommandLine command = new CommandLine(new RootCommand());
        new Commands()
                .with("demo", () -> new DemoCommand(console, clock))
                .with("new", () -> new NewCommand(console, clock))
                .with("load", () -> new LoadCommand(console, clock))
                .with("preview", () -> new PreviewCommand(console, clock))
                .with("undo", () -> new UndoCommand(console, clock))
                .with("backup", () -> new BackupCommand(console, clock))
                .with("restore", () -> new RestoreCommand(console, clock))
                .with("map", () -> new MapCommand(console, clock))
                .with("audit", () -> new AuditCommand(console, clock))
                .with("export", () -> new ExportCommand(console, clock))
                .with("need", () -> new NeedCommand(console, clock))
                .with("why", () -> new WhyCommand(console, clock))
                .with("facets", () -> new FacetsCommand(console, clock))
                .with("zones", () -> new ZonesCommand(console, clock))
                .with("advice", () -> new AdviceCommand(console, clock))
                .with("plant", () -> new PlantCommand(console, clock))
                .with("name", () -> new NameCommand(console, clock))
                .with("size", () -> new SizeCommand(console))
                .with("rules", () -> new RulesCommand(console, clock))
                .with("stock", () -> StockCommand.commandLine(console, clock, Commands.rest(words)))
                .with("substitutes", () -> new SubstitutesCommand(console, clock))
                .with("pairings", () -> new PairingsCommand(console, clock))
                .with("list", () -> ListCommand.commandLine(console, clock, Commands.rest(words)))
                .with("walk", () -> WalkCommand.commandLine(console, clock, Commands.rest(words)))
                .with("bulletin", () -> BulletinCommand.commandLine(console, clock, Commands.rest(words)))
                .with("print", () -> PrintCommand.commandLine(console, clock, Commands.rest(words)))
                .with("staff", () -> StaffCommand.commandLine(console, clock, Commands.rest(words)))
                .with("settings", () -> new SettingsCommand(console, clock))
                .with("serve", () -> new ServeCommand(console, clock))
                .addTo(command, words);
        command.setUsageHelpAutoWidth(true);
        command.setCaseInsensitiveEnumValuesAllowed(true);
        command.registerConverter(StockSize.class, RootCommand::size);
        return command;
    }

    private static StockSize size(String text) {
        return StockSize.read(text)
                .toOptional()
                .orElseThrow(() -> new TypeConversionException("\"" + text
                        + "\" is no size; write '#3', '19 cm', '2 in cal B&B' or '5-6 ft B&B' (a class"
                        + " is not a gallon)"));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "which command? One of those below.");
    }
}
