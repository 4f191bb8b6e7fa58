package slotledger.demo;

import java.util.List;

/**
 * One machine as it truly is, before anybody writes it down.
 *
 * @param tag        asset tag
 * @param serial     serial number
 * @param board      its board
 * @param model      model as this machine's row writes it
 * @param site       campus
 * @param room       room
 * @param use        what it is used for
 * @param costCentre who pays
 * @param system     operating system
 * @param modules    GB in each socket a person counts, in order; 0 is empty
 */
record DemoMachine(
        String tag,
        String serial,
        DemoBoard board,
        String model,
        String site,
        String room,
        String use,
        String costCentre,
        String system,
        List<Double> modules) {

    DemoMachine {
        modules = List.copyOf(modules);
    }

    double total() {
        return modules.stream().mapToDouble(Double::doubleValue).sum();
    }

    static String gigabytes(double amount) {
        return amount == Math.rint(amount) ? Long.toString((long) amount) : Double.toString(amount);
    }
}
