package asfound.bench;

import asfound.drawing.schedule.ScheduleReader;
import asfound.drawing.schedule.sample.SampleBook;
import asfound.drawing.schedule.sheet.ScheduleReading;
import asfound.recordset.Limits;
import asfound.recordset.Settings;
import asfound.recordset.Source;
import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import technology.tabula.ObjectExtractor;
import technology.tabula.PageIterator;
import technology.tabula.extractors.SpreadsheetExtractionAlgorithm;

/**
 * How fast schedules are read: the whole reading against PDFBox's text stripping alone and tabula-java's spreadsheet
 * extraction alone, on the same pages in the same run, by the clock and by the time of the processor.
 *
 * <p>{@code java -cp target/test-classes:target/asfound.jar asfound.bench.ReadingBench [pages [rounds]]}: 100 pages and 4
 * rounds where nothing is said; two rounds more before them are not counted. The time of the processor is that of all
 * threads, the compiler's and the collector's among them, so the first rounds are slow. With {@code -Xmx512m} it shows that
 * a small machine is enough, with {@code -XX:ActiveProcessorCount=1 -XX:+UseSerialGC} what one core does.
 */
public final class ReadingBench {

    private ReadingBench() {}

    private interface Work {
        int run(Path file) throws IOException;
    }

    public static void main(String[] args) throws IOException {
        int pages = args.length > 0 ? Integer.parseInt(args[0]) : 100;
        Path scratch = Files.createTempDirectory("reading-bench");
        Path file = scratch.resolve("book.pdf");
        SampleBook.draw(file, pages, scratch);
        System.out.printf(
                Locale.ROOT,
                "%d sheets, %d kB, %d cores, heap %d MB%n",
                pages,
                Files.size(file) / 1024,
                Runtime.getRuntime().availableProcessors(),
                Runtime.getRuntime().maxMemory() >> 20);
        int rounds = args.length > 1 ? Integer.parseInt(args[1]) : 4;
        for (int round = 1; round <= rounds + 2; round++) {
            System.out.println(round < 3 ? "warm-up " + round : "round " + (round - 2));
            measure("text stripping alone", file, ReadingBench::strip);
            measure("whole reading", file, ReadingBench::read);
            measure("tabula-java spreadsheet extraction alone", file, ReadingBench::tabula);
        }
    }

    private static void measure(String what, Path file, Work work) throws IOException {
        System.gc();
        for (MemoryPoolMXBean pool : ManagementFactory.getMemoryPoolMXBeans()) pool.resetPeakUsage();
        long start = System.nanoTime(), before = processor();
        int found = work.run(file);
        double seconds = (System.nanoTime() - start) / 1e9, processor = (processor() - before) / 1e9;
        long peak = ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(p -> p.getType() == java.lang.management.MemoryType.HEAP)
                .mapToLong(p -> p.getPeakUsage().getUsed())
                .sum();
        System.out.printf(
                Locale.ROOT,
                "  %-42s %6.2f s, processor %6.2f s  (%d), peak heap %d MB%n",
                what,
                seconds,
                processor,
                found,
                peak >> 20);
    }

    /** Of all threads, in nanoseconds: pages are read in threads of their own. */
    private static long processor() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private static int strip(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return new PDFTextStripper().getText(document).length();
        }
    }

    private static int read(Path file) throws IOException {
        Source source = new Source("book.pdf", file, Source.Kind.PDF, Files.size(file), "");
        ScheduleReading reading = new ScheduleReader(Settings.none(), Limits.usual()).read(source);
        return reading.directories().stream().mapToInt(d -> d.circuits().size()).sum();
    }

    private static int tabula(Path file) throws IOException {
        int tables = 0;
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            SpreadsheetExtractionAlgorithm algorithm = new SpreadsheetExtractionAlgorithm();
            try (ObjectExtractor extractor = new ObjectExtractor(document)) {
                PageIterator all = extractor.extract();
                while (all.hasNext()) tables += algorithm.extract(all.next()).size();
            }
        }
        return tables;
    }
}
