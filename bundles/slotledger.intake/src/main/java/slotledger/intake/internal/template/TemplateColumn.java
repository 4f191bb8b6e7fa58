package slotledger.intake.internal.template;

/**
 * One column of a template.
 *
 * @param heading     its heading
 * @param explanation what belongs in it
 * @param example     what the example row holds; a number is written as a number
 */
record TemplateColumn(String heading, String explanation, String example) {}
