package slotledger.firmware.spd;

import java.util.Optional;

/**
 * A setting beyond the base rate, which only runs where the board is told to use it: no promise of the standard.
 *
 * @param name    what kind of profile it is, with its number
 * @param cycle   in ps
 * @param rate    the standard grade, or the nearest whole MT/s
 * @param voltage in mV; empty where the profile doesn't say
 */
public record Profile(String name, int cycle, int rate, Optional<Integer> voltage) {

    @Override
    public String toString() {
        return "%s: %d MT/s%s".formatted(name, rate,
                voltage.map(mv -> " at %d.%03d V".formatted(mv / 1000, mv % 1000)).orElse(""));
    }
}
