package asfound.report.page;

import asfound.audit.Audit;
import asfound.report.picture.Pictures;
import asfound.report.template.JtepageGenerated;
import gg.jte.html.OwaspHtmlTemplateOutput;
import gg.jte.output.WriterOutput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the report page. The same audit gives the same bytes. */
public final class PageWriter {

    private PageWriter() {}

    /** Writes the page in UTF-8. */
    public static void write(Audit audit, Path file) throws IOException {
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.UTF_8)) {
            write(audit, out);
        }
    }

    /** Writes the page; the writer stays open. */
    public static void write(Audit audit, Writer out) throws IOException {
        Page page = new Page(
                audit,
                new Index(audit),
                Pictures.of(audit.network(), audit.verdicts()),
                Assets.style(),
                Assets.script(),
                Assets.symbols());
        try {
            JtepageGenerated.render(new OwaspHtmlTemplateOutput(new WriterOutput(out)), null, page);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        out.flush();
    }
}
