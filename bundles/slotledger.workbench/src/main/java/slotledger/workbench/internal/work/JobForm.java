package slotledger.workbench.internal.work;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Texts;

/** The fields of one job, in the order the work goes; all of it by keyboard. */
final class JobForm {

    private static final int GAP = 8;
    /** Lets the part, not the length of a sentence, decide how wide it is. */
    private static final int SQUEEZED = 100;

    private final Optional<JobCard> card;
    private final Consumer<What> happened;
    private final Composite all;
    private final Font large;
    private final List<Button> steps = new ArrayList<>();
    private final Map<String, Text> serials = new LinkedHashMap<>();
    private Label state;
    private Text words;

    /**
     * Makes the fields.
     *
     * @param hindrance why there may be no job to show, in words
     */
    JobForm(Composite parent, Optional<JobCard> card, Optional<String> hindrance, Consumer<What> happened) {
        this.card = card;
        this.happened = happened;
        all = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().margins(GAP, GAP).spacing(GAP, GAP).applyTo(all);
        large = BigType.of(all, SWT.NONE);
        if (card.isPresent()) {
            create(card.get());
        } else {
            sentence(hindrance.orElse(Texts.work_choose), large, Ids.JOB_HEADING);
        }
    }

    Composite control() {
        return all;
    }

    Optional<JobCard> card() {
        return card;
    }

    void focus() {
        if (steps.isEmpty()) {
            all.setFocus();
        } else {
            steps.stream().filter(step -> !step.getSelection()).findFirst().orElse(steps.get(0)).setFocus();
        }
    }

    /** Shows how far the job is; a field somebody is typing in is left alone. */
    void show(Job job) {
        for (int i = 0; i < steps.size(); i++) {
            steps.get(i).setSelection(job.ticked().contains(i + 1));
        }
        serials.forEach((slot, field) -> {
            if (!field.isFocusControl()) {
                field.setText(job.serials().getOrDefault(slot, ""));
            }
        });
        StringBuilder text = new StringBuilder(Texts.with(Texts.work_is, job.state().text()));
        if (!job.reason().isEmpty()) {
            text.append(' ').append(job.reason());
        }
        job.deviations().forEach(said -> text.append('\n').append(Texts.with(Texts.work_deviation,
                said.slot().isEmpty() ? said.text() : said.slot() + ": " + said.text())));
        state.setText(text.toString().replace("&", "&&"));
        state.requestLayout();
    }

    private void create(JobCard shown) {
        sentence(shown.machine() + " · " + shown.summary(), BigType.of(all, SWT.BOLD), Ids.JOB_HEADING);
        sentence(String.join(" · ", shown.place(), shown.board(), shown.number()), large, "");
        state = sentence("", large, Ids.JOB_STATE);
        shown.heed().forEach(text -> sentence("! " + text, large, ""));
        shown.cautions().forEach(text -> sentence(text, all.getFont(), ""));
        for (int i = 0; i < shown.steps().size(); i++) {
            step(i + 1, shown.steps().get(i));
        }
        shown.receiving().forEach(this::serial);
        shown.expected().forEach(text -> sentence(text, all.getFont(), ""));
        if (!shown.stepBack().isEmpty()) {
            sentence(shown.stepBack(), all.getFont(), "");
        }
        ending();
    }

    private Label sentence(String text, Font font, String name) {
        Label label = new Label(all, SWT.WRAP);
        label.setFont(font);
        label.setText(text.replace("&", "&&"));
        label.setData(Ids.WIDGET, name);
        GridDataFactory.fillDefaults().grab(true, false).hint(SQUEEZED, SWT.DEFAULT).applyTo(label);
        return label;
    }

    private void step(int number, String text) {
        Button box = new Button(all, SWT.CHECK | SWT.WRAP);
        box.setFont(large);
        box.setText(number + ". " + text.replace("&", "&&"));
        box.setData(Ids.WIDGET, Ids.JOB_STEP + number);
        box.addListener(SWT.Selection, event -> happened.accept(new What.Ticked(number, box.getSelection())));
        GridDataFactory.fillDefaults().grab(true, false).hint(SQUEEZED, SWT.DEFAULT).applyTo(box);
        steps.add(box);
    }

    private void serial(JobCard.Receiving receiving) {
        Composite line = new Composite(all, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        Label label = new Label(line, SWT.NONE);
        label.setFont(large);
        label.setText(Texts.with(Texts.work_serial, receiving.slot()).replace("&", "&&"));
        label.setToolTipText(receiving.module());
        Text field = new Text(line, SWT.BORDER | SWT.SINGLE);
        field.setFont(large);
        field.setMessage(receiving.module());
        field.setData(Ids.WIDGET, Ids.JOB_SERIAL + receiving.slot());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(field);
        String[] kept = {""};
        field.addListener(SWT.FocusIn, event -> kept[0] = field.getText());
        Runnable read = () -> {
            if (!field.getText().equals(kept[0])) {
                kept[0] = field.getText();
                happened.accept(new What.SerialRead(receiving.slot(), field.getText()));
            }
        };
        field.addListener(SWT.FocusOut, event -> read.run());
        field.addListener(SWT.DefaultSelection, event -> {
            read.run();
            field.traverse(SWT.TRAVERSE_TAB_NEXT);
        });
        serials.put(receiving.slot(), field);
    }

    /** One field for words serves deviations and every end that needs a reason. */
    private void ending() {
        words = new Text(all, SWT.BORDER | SWT.SINGLE);
        words.setFont(large);
        words.setMessage(Texts.work_words);
        words.setData(Ids.WIDGET, Ids.JOB_WORDS);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(words);
        Composite row = new Composite(all, SWT.NONE);
        row.setLayout(new RowLayout());
        List<Button> withWords = new ArrayList<>();
        button(row, Texts.work_begin, JobState.IN_WORK);
        button(row, Texts.work_done, JobState.DONE);
        Button note = push(row, Texts.work_note, Ids.JOB_NOTE);
        note.addListener(SWT.Selection, event -> {
            happened.accept(new What.Deviated("", words.getText()));
            words.setText("");
        });
        withWords.add(note);
        withWords.add(button(row, Texts.work_differently, JobState.DONE_DIFFERENTLY));
        withWords.add(button(row, Texts.work_failed, JobState.FAILED));
        withWords.add(button(row, Texts.work_put_back, JobState.PUT_BACK));
        Runnable enable = () -> withWords.forEach(each -> each.setEnabled(!words.getText().isBlank()));
        words.addModifyListener(event -> enable.run());
        enable.run();
    }

    private Button button(Composite row, String text, JobState next) {
        Button button = push(row, text, Ids.JOB_BECOMES + next.id());
        button.addListener(SWT.Selection, event -> happened.accept(new What.Became(next, words.getText())));
        return button;
    }

    private Button push(Composite row, String text, String name) {
        Button button = new Button(row, SWT.PUSH);
        button.setFont(large);
        button.setText(text);
        button.setData(Ids.WIDGET, name);
        return button;
    }
}
