package asfound.report.pdf;

import asfound.drawing.page.PageTree;
import asfound.recordset.Limits;
import asfound.recordset.Patience;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.io.MemoryUsageSetting;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;

/**
 * Writes marked drawings: the drawing's pages as they were, annotations on top, one summary page in front and, where it
 * is too short for the list, more at the end. The drawing's own file is only read.
 */
public final class RedlineWriter {

    private RedlineWriter() {}

    /**
     * Writes the marked copy. Where the drawing cannot be copied, its summary is written alone and says why.
     *
     * @param limits how long a copy may take, and how much it may hold
     * @return why the drawing's own pages are not in it; empty where they are
     */
    public static Optional<String> write(Redline redline, Limits limits, OutputStream out) throws IOException {
        Path path = redline.input().source().path();
        String trouble;
        try {
            Optional<String> now = sha256(path);
            if (now.isEmpty()) {
                trouble = "The drawing vanished while it was audited: its pages are not copied. Put it back and run the"
                        + " audit again.";
            } else if (!now.get().equals(redline.input().source().sha256())) {
                trouble = "The drawing changed while it was audited: its pages are not copied. Run the audit again.";
            } else {
                byte[] copy = copy(redline, path, limits);
                if (sha256(path).equals(now)) {
                    out.write(copy);
                    return Optional.empty();
                }
                trouble =
                        "The drawing changed while it was copied: its pages are not in this copy. Run the audit again.";
            }
        } catch (InvalidPasswordException e) {
            trouble = "The drawing is protected by a password: its pages cannot be copied. Save it without one.";
        } catch (UnmarkableException e) {
            trouble = "The drawing's pages cannot be copied (" + e.getMessage() + "). Print it to a new PDF.";
        }
        alone(redline, trouble, out);
        return Optional.of(trouble);
    }

    /** The drawing is damaged: told apart from trouble with the output, which must not be swallowed. */
    private static final class UnmarkableException extends IOException {
        private static final long serialVersionUID = 1L;

        UnmarkableException(Throwable cause) {
            super(cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage(), cause);
        }

        UnmarkableException(String message) {
            super(message);
        }
    }

    /** A drawing may be made so that copying it never ends or never fits. */
    private static byte[] copy(Redline redline, Path path, Limits limits) throws IOException {
        try {
            return Patience.within(limits.fileTime(), () -> {
                        try (PDDocument document = open(path, limits)) {
                            return marked(redline, document, limits);
                        }
                    })
                    .orElseThrow(() -> new UnmarkableException("copying took longer than "
                            + limits.fileTime().toSeconds() + " s, the limit for one file"));
        } catch (UnmarkableException e) {
            // the library's words for its own limit
            boolean tooMuch = e.getMessage().contains("scratch file memory");
            throw tooMuch ? new UnmarkableException(BoundedBytes.tooMuch(limits.expandedBytes())) : e;
        } catch (IOException e) {
            throw e;
        } catch (OutOfMemoryError e) {
            throw new UnmarkableException("copying asks for more memory than there is");
        } catch (Exception | StackOverflowError e) {
            throw new UnmarkableException(e);
        }
    }

    private static PDDocument open(Path path, Limits limits) throws IOException {
        try {
            return Loader.loadPDF(
                    path.toFile(), MemoryUsageSetting.setupMainMemoryOnly(limits.expandedBytes()).streamCache);
        } catch (InvalidPasswordException e) {
            throw e;
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw new UnmarkableException(e);
        }
    }

    private static byte[] marked(Redline redline, PDDocument document, Limits limits) throws IOException {
        try {
            // adding a page goes up the tree, and would not come to an end
            if (PageTree.of(document).loops())
                throw new UnmarkableException("its list of pages leads back into itself");
            boolean wasProtected = document.isEncrypted();
            document.setAllSecurityToBeRemoved(true);
            List<String> remarks = new ArrayList<>();
            Set<String> leftOut = Stripped.strip(document);
            if (wasProtected) remarks.add("The drawing was protected without a password to open it; this copy is not.");
            if (!leftOut.isEmpty()) remarks.add("Not carried over: " + String.join(", ", leftOut) + ".");
            Typeface typeface = new Typeface(document);
            int pages = document.getNumberOfPages();
            for (int i = 0; i < pages; i++) annotate(redline, document, i, typeface);
            List<Canvas> summary = RedlineSummary.of(redline, typeface, paper(document), remarks, pages);
            PDPage front = upright(SheetFile.page(document, summary.get(0)));
            if (pages == 0) document.addPage(front);
            else document.getPages().insertBefore(front, document.getPage(0));
            for (Canvas more : summary.subList(1, summary.size()))
                document.addPage(upright(SheetFile.page(document, more)));
            Outline.add(redline, document, pages);
            typeface.embed();
            SheetFile.seal(document, "Marked: " + redline.drawing());
            document.setVersion(1.7f);
            BoundedBytes bytes = new BoundedBytes(limits.expandedBytes());
            document.save(bytes);
            return bytes.toByteArray();
        } catch (Patience.GivenUpException | UnmarkableException e) {
            throw e;
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw new UnmarkableException(e);
        }
    }

    private static void annotate(Redline redline, PDDocument document, int index, Typeface typeface)
            throws IOException {
        List<Mark> marks =
                redline.marks().stream().filter(m -> m.page() == index + 1).toList();
        Optional<Redline.PageVerdict> verdict =
                Optional.ofNullable(redline.pages().get(index + 1));
        if (marks.isEmpty() && verdict.isEmpty()) return;
        Patience.check();
        PDPage page = document.getPage(index);
        PageFrame frame = PageFrame.of(page);
        Markup markup = new Markup(new Redpen(document, page, typeface), frame, PageInk.of(page, frame), typeface);
        markup.draw(marks, verdict);
    }

    private static void alone(Redline redline, String trouble, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            Typeface typeface = new Typeface(document);
            for (Canvas canvas : RedlineSummary.of(redline, typeface, Paper.LETTER, List.of(trouble), 0))
                document.addPage(SheetFile.page(document, canvas));
            typeface.embed();
            SheetFile.seal(document, "Marked: " + redline.drawing());
            document.save(out);
        }
    }

    private static Paper paper(PDDocument document) {
        if (document.getNumberOfPages() == 0) return Paper.LETTER;
        PageFrame first = PageFrame.of(document.getPage(0));
        return Paper.like(first.width(), first.height());
    }

    /** States what a page would else inherit from the drawing's page tree. */
    private static PDPage upright(PDPage page) {
        PDRectangle box = page.getMediaBox();
        page.setCropBox(box);
        page.setRotation(0);
        page.getCOSObject().setInt(org.apache.pdfbox.cos.COSName.ROTATE, 0);
        return page;
    }

    /** Empty where the file cannot be read any more. */
    private static Optional<String> sha256(Path path) {
        try (InputStream in = new DigestInputStream(Files.newInputStream(path), MessageDigest.getInstance("SHA-256"))) {
            in.transferTo(OutputStream.nullOutputStream());
            return Optional.of(HexFormat.of()
                    .formatHex(((DigestInputStream) in).getMessageDigest().digest()));
        } catch (IOException gone) {
            return Optional.empty();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
