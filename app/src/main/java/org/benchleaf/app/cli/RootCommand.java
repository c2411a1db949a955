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
    public static CommandLine commandLine(Console console, Clock clock) {
        CommandLine command = new CommandLine(new RootCommand());
        command.addSubcommand(new DemoCommand(console, clock));
        command.addSubcommand(new NewCommand(console, clock));
        command.addSubcommand(new LoadCommand(console, clock));
        command.addSubcommand(new PreviewCommand(console, clock));
        command.addSubcommand(new UndoCommand(console, clock));
        command.addSubcommand(new MapCommand(console, clock));
        command.addSubcommand(new AuditCommand(console, clock));
        command.addSubcommand(new ExportCommand(console, clock));
        command.addSubcommand(new NeedCommand(console, clock));
        command.addSubcommand(new WhyCommand(console, clock));
        command.addSubcommand(new FacetsCommand(console, clock));
        command.addSubcommand(new ZonesCommand(console, clock));
        command.addSubcommand(new PlantCommand(console, clock));
        command.addSubcommand(new NameCommand(console, clock));
        command.addSubcommand(new SizeCommand(console));
        command.addSubcommand(new RulesCommand(console, clock));
        command.addSubcommand(StockCommand.commandLine(console, clock));
        command.addSubcommand(new SubstitutesCommand(console, clock));
        command.addSubcommand(new PairingsCommand(console, clock));
        command.addSubcommand(ListCommand.commandLine(console, clock));
        command.addSubcommand(PrintCommand.commandLine(console, clock));
        command.addSubcommand(StaffCommand.commandLine(console, clock));
        command.addSubcommand(new ServeCommand(console, clock));
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
