package asfound.drawing.page;

import java.nio.charset.StandardCharsets;
import org.apache.pdfbox.io.RandomAccessRead;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;

/**
 * A page whose content is at hand already. The library, which keeps to itself how it takes content apart, is given one
 * instruction in its place; whoever follows the page puts the content there.
 */
final class UnpackedPage extends PDPage {

    private static final byte[] ONE_INSTRUCTION = "content ".getBytes(StandardCharsets.US_ASCII);

    private final PDPage page;

    UnpackedPage(PDPage page) {
        super(page.getCOSObject());
        this.page = page;
    }

    @Override
    public PDResources getResources() {
        return page.getResources();
    }

    @Override
    public RandomAccessRead getContentsForStreamParsing() {
        return new RandomAccessReadBuffer(ONE_INSTRUCTION);
    }
}
