package slotledger.cli.internal;

import picocli.CommandLine;
import picocli.CommandLine.IFactory;
import slotledger.app.FleetDesk;

/** Makes commands, with what they need passed to their constructors. */
final class CommandFactory implements IFactory {

    private final FleetDesk desk;
    private final Console console;

    CommandFactory(FleetDesk desk, Console console) {
        this.desk = desk;
        this.console = console;
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        if (DeskCommand.class.isAssignableFrom(type)) {
            var constructor = type.getDeclaredConstructor(FleetDesk.class, Console.class);
            return constructor.newInstance(desk, console);
        }
        return CommandLine.defaultFactory().create(type);
    }
}
