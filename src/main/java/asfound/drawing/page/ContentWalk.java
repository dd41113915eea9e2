package asfound.drawing.page;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.OperatorName;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDTransparencyGroup;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;

/**
 * Walks once through a page's content, within its time and its limits, and tells what of it could not be followed and what
 * nobody sees.
 */
abstract class ContentWalk extends PDFGraphicsStreamEngine {

    /** DrawObject, of the library, passes over a form at a deeper level. */
    static final int DEEPEST = 50;

    /** The clock is looked at after so many instructions, or letters of one. */
    private static final int STEPS = 1024;

    private final long deadline;
    private final int mostObjects;
    private final HiddenContent hidden;
    private final PageContent content;
    private int steps;
    /** The content of the page until it is met; null where the library unpacks it itself. */
    private byte[] unpacked;

    private boolean tooDeep;

    ContentWalk(PDPage page, HiddenContent hidden, int mostObjects, long mostBytes, long deadlineNanos) {
        super(page);
        deadline = deadlineNanos;
        this.mostObjects = mostObjects;
        this.hidden = hidden;
        content = new PageContent(new StreamCheck(mostBytes, this::demandEnd));
    }

    /** How many things of the kind of which there are most have been gathered. */
    abstract int gathered();

    /** Goes through the page, and through what its form fields and text notes show. */
    void scan() throws IOException {
        unpacked = content.of(getPage()).orElse(null);
        processPage(unpacked == null ? getPage() : new UnpackedPage(getPage()));
        unpacked = null; // a page may hold none
        for (PDAnnotation note : getPage().getAnnotations()) {
            String kind = note.getSubtype();
            boolean shown = !note.isHidden() && !note.isNoView();
            if (shown && !hidden.isOff(note.getCOSObject()) && ("Widget".equals(kind) || "FreeText".equals(kind)))
                showAnnotation(note);
        }
        demandEnd();
    }

    /** What of its content could not be unpacked or followed, in words. */
    List<String> lost() {
        return content.lost();
    }

    /** To be called for each instruction, and for each letter: one instruction can show a million of them. */
    final void step() throws IOException {
        if (++steps % STEPS == 0) demandEnd();
    }

    /** What is being drawn belongs to a layer that is switched off. */
    final boolean isHidden() {
        return hidden.isHidden();
    }

    /** A picture is on a layer that is switched off. */
    final boolean isOff(PDImage image) {
        return image instanceof PDImageXObject own && hidden.isOff(own.getCOSObject());
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        if (unpacked != null) {
            follow();
            return;
        }
        step();
        super.processOperator(operator, operands);
        if (OperatorName.SET_FONT_AND_SIZE.equals(operator.getName()))
            content.font(getGraphicsState().getTextState().getFont());
    }

    private void follow() throws IOException {
        ContentParser parser = new ContentParser(unpacked);
        unpacked = null;
        List<COSBase> operands = new ArrayList<>();
        for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
            if (token instanceof Operator operator) {
                processOperator(operator, operands);
                operands.clear();
            } else operands.add((COSBase) token);
        }
    }

    /** The library passes over what fails in a form, and would pass over our own limits with it. */
    @Override
    protected void operatorException(Operator operator, List<COSBase> operands, IOException e) throws IOException {
        if (e instanceof PageTimeException
                || e instanceof PageObjectsException
                || e instanceof StreamCheck.TooMuchException) throw e;
        content.failed(operator.getName());
        super.operatorException(operator, operands, e);
    }

    @Override
    protected void unsupportedOperator(Operator operator, List<COSBase> operands) {
        content.unknown(operator.getName());
    }

    @Override
    public void showForm(PDFormXObject form) throws IOException {
        content.form(form.getCOSObject());
        int depth = hidden.depth();
        hidden.begin(form.getCOSObject());
        super.showForm(form);
        hidden.endTo(depth);
    }

    @Override
    public void showTransparencyGroup(PDTransparencyGroup form) throws IOException {
        content.form(form.getCOSObject());
        int depth = hidden.depth();
        hidden.begin(form.getCOSObject());
        super.showTransparencyGroup(form);
        hidden.endTo(depth);
    }

    @Override
    protected void processAnnotation(PDAnnotation note, PDAppearanceStream appearance) throws IOException {
        content.form(appearance.getCOSObject());
        super.processAnnotation(note, appearance);
    }

    private void demandEnd() throws IOException {
        if (System.nanoTime() > deadline || Thread.currentThread().isInterrupted()) throw new PageTimeException();
        if (gathered() > mostObjects) throw new PageObjectsException();
    }

    /** The page takes longer than a page may. */
    static final class PageTimeException extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** The page holds more than a page may. */
    static final class PageObjectsException extends IOException {
        private static final long serialVersionUID = 1L;
    }

    /** Forms drawn within forms deeper than the library follows them: what they show was not met. */
    boolean tooDeep() {
        return tooDeep;
    }

    @Override
    public void increaseLevel() {
        super.increaseLevel();
        tooDeep |= getLevel() > DEEPEST;
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        super.beginMarkedContentSequence(tag, properties);
        hidden.begin(tag, properties);
    }

    @Override
    public void endMarkedContentSequence() {
        super.endMarkedContentSequence();
        hidden.end();
    }
}
