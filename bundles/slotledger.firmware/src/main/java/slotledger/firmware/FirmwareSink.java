package slotledger.firmware;

/** Takes readings one by one, so that a folder of any size is never in memory as a whole. */
@FunctionalInterface
public interface FirmwareSink {

    /**
     * Takes the next reading; may throw to stop the work.
     *
     * @param done share of the files that are read, 0 to 1
     */
    void take(FirmwareReading reading, double done);
}
