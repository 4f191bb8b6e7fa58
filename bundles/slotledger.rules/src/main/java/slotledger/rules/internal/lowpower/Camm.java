package slotledger.rules.internal.lowpower;

import java.util.Set;
import slotledger.model.module.Form;

/** The compression-attached forms. */
final class Camm {

    private Camm() {
    }

    static boolean is(Form form) {
        return form == Form.CAMM2 || form == Form.LPCAMM2;
    }

    static boolean isAny(Set<Form> forms) {
        return forms.contains(Form.CAMM2) || forms.contains(Form.LPCAMM2);
    }
}
