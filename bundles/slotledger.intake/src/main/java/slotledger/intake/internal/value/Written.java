package slotledger.intake.internal.value;

import slotledger.model.source.Place;

/**
 * A text and where it stands.
 *
 * @param text  as it is written
 * @param place file, line and column
 */
public record Written(String text, Place place) {
}
