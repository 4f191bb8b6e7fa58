package slotledger.cli.internal;

import picocli.CommandLine;
import picocli.CommandLine.IFactory;
import slotledger.app.FleetDesk;
import slotledger.serve.PhoneService;

/** Makes commands, with what they need passed to their constructors. */
final class CommandFactory implements IFactory {

    private final FleetDesk desk;
    private final PhoneService phones;
    private final Console console;

    CommandFactory(FleetDesk desk, PhoneService phones, Console console) {
        this.desk = desk;
        this.phones = phones;
        this.console = console;
    }

    @Override
    public <K> K create(Class<K> type) throws Exception {
        if (DeskCommand.class.isAssignableFrom(type)) {
            var constructor = type.getDeclaredConstructor(FleetDesk.class, Console.class);
            return constructor.newInstance(desk, console);
        }
        if (type == ServeCommand.class) {
            return type.cast(new ServeCommand(phones, console));
        }
        return CommandLine.defaultFactory().create(type);
    }
}
