package slotledger.workbench.internal.app;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import slotledger.workbench.internal.Ids;

/** Fleet over findings and plan at the left, one machine's slots over its reasons at the right. */
public final class FleetPerspective implements IPerspectiveFactory {

    private static final float LEFT = 0.6f;
    private static final float UPPER = 0.62f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.setFixed(false);
        IFolderLayout fleet = layout.createFolder("left", IPageLayout.LEFT, LEFT, IPageLayout.ID_EDITOR_AREA);
        fleet.addView(Ids.FLEET);
        IFolderLayout findings = layout.createFolder("below", IPageLayout.BOTTOM, UPPER, "left");
        findings.addView(Ids.FINDINGS);
        findings.addView(Ids.PLAN_PART);
        findings.addPlaceholder("org.eclipse.ui.views.ProgressView");
        IFolderLayout slots = layout.createFolder("right", IPageLayout.RIGHT, LEFT, IPageLayout.ID_EDITOR_AREA);
        slots.addView(Ids.SLOTS);
        IFolderLayout why = layout.createFolder("reasons", IPageLayout.BOTTOM, UPPER, "right");
        why.addView(Ids.WHY);
    }
}
