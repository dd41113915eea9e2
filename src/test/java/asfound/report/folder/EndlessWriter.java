package asfound.report.folder;

import java.io.IOException;
import java.nio.file.Path;

/** A process that writes one report after the other into one folder until it is killed. */
final class EndlessWriter {

    private EndlessWriter() {}

    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        System.out.println("ready");
        for (int n = 0; ; n++) {
            OutputFolder.at(folder, folder.resolveSibling("record set")).write(Reports.saying(args[1] + n % 2));
        }
    }
}
