package asfound.report.pdf;

import asfound.finding.Finding;
import asfound.model.Box;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColor;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationFreeText;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationMarkup;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationRubberStamp;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationSquare;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationText;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceDictionary;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDBorderEffectDictionary;

/**
 * Puts annotations on one page (ISO 32000-1, 12.5), each with an appearance of its own, so that every viewer shows it.
 * Boxes are as displayed; rotation and crop are turned here and nowhere else.
 */
final class Redpen {

    private static final PDColor RED = new PDColor(
            new float[] {(float) Tint.RED.r(), (float) Tint.RED.g(), (float) Tint.RED.b()}, PDDeviceRGB.INSTANCE);

    private final PDDocument document;
    private final PDPage page;
    private final PageFrame frame;
    private final Typeface typeface;
    private final List<PDAnnotation> annotations;

    Redpen(PDDocument document, PDPage page, Typeface typeface) throws IOException {
        this.document = document;
        this.page = page;
        this.frame = PageFrame.of(page);
        this.typeface = typeface;
        this.annotations = page.getAnnotations();
    }

    /** A cloud around the entry. Its comment is the whole story, for viewers that show no replies. */
    PDAnnotationMarkup cloud(Box entry, String name, String subject, String comment) throws IOException {
        double reach = Cloud.reach(entry) + 0.6;
        Box outer = new Box(entry.x() - reach, entry.y() - reach, entry.w() + 2 * reach, entry.h() + 2 * reach);
        PDAnnotationSquare square = new PDAnnotationSquare();
        Canvas canvas = new Canvas(typeface, outer.w(), outer.h());
        Cloud.draw(canvas, new Box(reach, reach, entry.w(), entry.h()), new Pen(1, Tint.RED));
        PDBorderEffectDictionary effect = new PDBorderEffectDictionary();
        effect.setStyle(PDBorderEffectDictionary.STYLE_CLOUDY);
        effect.setIntensity(1);
        square.setBorderEffect(effect);
        square.setRectDifferences((float) reach);
        return add(square, outer, canvas, name, subject, comment);
    }

    /** The right value in a small frame, with a line ({@code leader}, may be null) to the entry. */
    PDAnnotationMarkup note(Note note, Box at, double[][] leader, String name, String subject, String comment)
            throws IOException {
        Box outer = leader == null ? at : Leader.around(at, leader, 2);
        Canvas canvas = new Canvas(typeface, outer.w(), outer.h());
        if (leader != null) {
            canvas.line(
                    leader[0][0] - outer.x(),
                    leader[0][1] - outer.y(),
                    leader[1][0] - outer.x(),
                    leader[1][1] - outer.y(),
                    new Pen(0.7, Tint.RED));
            canvas.disc(leader[1][0] - outer.x(), leader[1][1] - outer.y(), 1.5, Tint.RED);
        }
        note.draw(canvas, at.x() - outer.x(), at.y() - outer.y());
        PDAnnotationFreeText free = new PDAnnotationFreeText();
        free.setDefaultAppearance(Canvas.num(Tint.RED.r()) + " " + Canvas.num(Tint.RED.g()) + " "
                + Canvas.num(Tint.RED.b()) + " rg /Helv " + Canvas.num(note.size()) + " Tf");
        if (leader != null) {
            free.setIntent(PDAnnotationFreeText.IT_FREE_TEXT_CALLOUT);
            double[] from = frame.toUser(leader[1][0], leader[1][1]), to = frame.toUser(leader[0][0], leader[0][1]);
            free.setCallout(new float[] {(float) from[0], (float) from[1], (float) to[0], (float) to[1]});
            free.getCOSObject().setItem(COSName.RD, differences(frame.toUser(outer), frame.toUser(at)));
        }
        return add(free, outer, canvas, name, subject, comment);
    }

    /** The evidence as a reply to a mark. As is usual for replies it has no picture of its own on the page. */
    void reply(PDAnnotationMarkup to, Finding finding) {
        PDAnnotationText reply = new PDAnnotationText();
        reply.setRectangle(to.getRectangle());
        reply.setInReplyTo(to);
        reply.setReplyType(PDAnnotationMarkup.RT_REPLY);
        reply.setName(PDAnnotationText.NAME_COMMENT);
        reply.setHidden(true);
        reply.setNoZoom(true);
        reply.setNoRotate(true);
        label(reply, to.getAnnotationName() + "-" + finding.id(), "Evidence", Evidence.inFull(finding));
    }

    /** A stamp that cannot be overlooked. */
    void stamp(Stamp stamp, Box at) throws IOException {
        Canvas canvas = new Canvas(typeface, at.w(), at.h());
        stamp.draw(canvas);
        PDAnnotationRubberStamp rubber = new PDAnnotationRubberStamp();
        rubber.setName("NotForIsolation");
        add(rubber, at, canvas, "stamp-" + (annotations.size() + 1), "Isolation", stamp.comment());
    }

    /** Makes the annotations part of the page. */
    void lift() {
        page.setAnnotations(annotations);
    }

    private PDAnnotationMarkup add(
            PDAnnotationMarkup annotation, Box outer, Canvas canvas, String name, String subject, String comment)
            throws IOException {
        annotation.setRectangle(frame.toUser(outer));
        annotation.setColor(RED);
        annotation.setAppearance(appearance(canvas));
        return label(annotation, name, subject, comment);
    }

    private PDAnnotationMarkup label(PDAnnotationMarkup annotation, String name, String subject, String comment) {
        annotation.setAnnotationName(name);
        annotation.setTitlePopup("asfound");
        annotation.setSubject(Visible.of(subject));
        annotation.setContents(Visible.lines(comment));
        annotation.setPrinted(true);
        annotation.setPage(page);
        annotations.add(annotation);
        return annotation;
    }

    private PDAppearanceDictionary appearance(Canvas canvas) throws IOException {
        PDAppearanceStream stream = new PDAppearanceStream(document);
        stream.setBBox(new PDRectangle((float) canvas.width(), (float) canvas.height()));
        stream.setMatrix(frame.upright().createAffineTransform());
        stream.setResources(canvas.resources());
        try (OutputStream out = stream.getContentStream().createOutputStream(COSName.FLATE_DECODE)) {
            out.write(canvas.content());
        }
        PDAppearanceDictionary appearance = new PDAppearanceDictionary(new COSDictionary());
        appearance.setNormalAppearance(stream);
        return appearance;
    }

    private static COSArray differences(PDRectangle outer, PDRectangle inner) {
        COSArray array = new COSArray();
        array.add(new COSFloat(Math.max(0, inner.getLowerLeftX() - outer.getLowerLeftX())));
        array.add(new COSFloat(Math.max(0, inner.getLowerLeftY() - outer.getLowerLeftY())));
        array.add(new COSFloat(Math.max(0, outer.getUpperRightX() - inner.getUpperRightX())));
        array.add(new COSFloat(Math.max(0, outer.getUpperRightY() - inner.getUpperRightY())));
        return array;
    }
}
