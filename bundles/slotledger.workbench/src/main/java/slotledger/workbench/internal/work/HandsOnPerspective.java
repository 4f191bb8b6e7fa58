package slotledger.workbench.internal.work;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import slotledger.workbench.internal.Ids;

/** The rounds, and one machine's job over its slots. */
public final class HandsOnPerspective implements IPerspectiveFactory {

    private static final float LEFT = 0.38f;
    private static final float UPPER = 0.62f;

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(false);
        layout.setFixed(false);
        layout.createFolder("rounds", IPageLayout.LEFT, LEFT, IPageLayout.ID_EDITOR_AREA).addView(Ids.ROUNDS);
        layout.createFolder("job", IPageLayout.RIGHT, LEFT, IPageLayout.ID_EDITOR_AREA).addView(Ids.JOB);
        IFolderLayout slots = layout.createFolder("slots", IPageLayout.BOTTOM, UPPER, "job");
        slots.addView(Ids.SLOTS);
        slots.addView(Ids.WHY);
        slots.addPlaceholder("org.eclipse.ui.views.ProgressView");
    }
}
