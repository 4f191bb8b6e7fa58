package slotledger.intake.internal.table;

import java.util.Locale;
import java.util.Optional;

/** What a column can mean, in any of our tables. The name with hyphens stands in word lists and mapping files. */
public enum Field {
    // fleet
    ASSET_TAG,
    SERIAL,
    COMPUTER_NAME,
    MAKER,
    MODEL,
    SITE,
    ROOM,
    COST_CENTRE,
    ROLE,
    OPERATING_SYSTEM,
    PROCESSOR,
    PROCESSOR_COUNT,
    /** Whether memory is mirrored or kept as spare. */
    MEMORY_MODE,
    SLOT_COUNT,
    FREE_SLOTS,
    MODULE_COUNT,
    /** Total memory, or all modules in words. */
    MEMORY,
    MEMORY_TYPE,
    MEMORY_RATE,
    /** All modules of a machine in one text. */
    MODULES,
    SLOT,
    SLOT_SIZE,
    SLOT_TYPE,
    SLOT_RATE,
    SLOT_PART,
    SLOT_SERIAL,
    SLOT_MAKER,
    // offers and shelf
    SUPPLIER,
    PART,
    MODULE,
    CAPACITY,
    GENERATION,
    FORM,
    RATE,
    ECC,
    BUFFERING,
    ORGANISATION,
    RANKS,
    CHIP_WIDTH,
    CHIP_SIZE,
    VOLTAGE,
    LATENCY,
    PACK_SIZE,
    PRICE,
    PRICE_FROM,
    FROM_QUANTITY,
    /** Whether a price by quantity holds for all packs or for further ones. */
    PRICE_RULE,
    TAX,
    STOCK,
    LEAD_TIME,
    SHIPPING,
    FREE_FROM,
    MINIMUM_ORDER,
    CURRENCY,
    VALID_UNTIL,
    PRICE_DATE,
    COUNT,
    FILLER,
    // what arrived
    PACKS,
    UNUSABLE,
    // policy
    DUAL_CHANNEL,
    WEIGHT,
    BUDGET,
    // any table
    REMARK,
    /** Not used, on purpose. */
    IGNORED;

    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The field of an id; blanks and case don't matter. */
    public static Optional<Field> ofId(String id) {
        String wanted = id.strip().toUpperCase(Locale.ROOT).replaceAll("[ -]+", "_");
        for (Field field : values()) {
            if (field.name().equals(wanted)) {
                return Optional.of(field);
            }
        }
        return wanted.equals("IGNORE") ? Optional.of(IGNORED) : Optional.empty();
    }

    /** Whether several columns may have this field, told apart by their label. */
    public boolean repeats() {
        return switch (this) {
            case SLOT, SLOT_SIZE, SLOT_TYPE, SLOT_RATE, SLOT_PART, SLOT_SERIAL, SLOT_MAKER, PRICE_FROM, REMARK,
                    IGNORED -> true;
            default -> false;
        };
    }
}
