package dev.sunthread.tour;

import dev.sunthread.testing.Browser;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.openqa.selenium.By;
import org.openqa.selenium.WebDriver;

/** What a person sees at the stops of the tour. */
final class TourPictures {

    private static final int WIDTH = 1120;
    private static final int HEIGHT = 900;
    /** The name of a picture, and the address that it shows. */
    private static final Map<String, String> STOPS = new LinkedHashMap<>(Map.of(
            "start.png", "/",
            "trace.png", "/trace?way=forward&lot=A-17",
            "flow.png", "/trace/flow?way=forward&lot=A-17",
            "lines.png", "/trace?way=forward&lot=A-17&level=panel#lines",
            "panel.png", "/unit?item=PAN-400&serial=PN-003",
            "position.png", "/position?station=BOND-1&code=V1",
            "findings.png", "/findings"));

    private TourPictures() {}

    /** Takes every picture, as a person sees it, into a directory. */
    static void take(URI plant, String person, Path directory) throws IOException {
        try (var browser = Browser.open(WIDTH, HEIGHT).preferring("light").signIn(plant.getPort(), person)) {
            for (var stop : STOPS.entrySet()) {
                WebDriver page = browser.go(plant.resolve(stop.getValue()));
                Browser.waiting(page)
                        .until(any -> page.findElements(By.cssSelector("[data-flow]:not([data-drawn])"))
                                .isEmpty());
                Path picture = directory.resolve(stop.getKey());
                browser.screenshot(picture);
                pack(picture);
            }
        }
    }

    // a browser packs for speed; packed for size a picture is a quarter smaller
    private static void pack(Path picture) throws IOException {
        BufferedImage loose = ImageIO.read(picture.toFile());
        BufferedImage opaque = new BufferedImage(loose.getWidth(), loose.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
        opaque.getGraphics().drawImage(loose, 0, 0, null);
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam smallest = writer.getDefaultWriteParam();
        smallest.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        smallest.setCompressionQuality(0);
        Files.delete(picture);
        try (ImageOutputStream file = ImageIO.createImageOutputStream(picture.toFile())) {
            writer.setOutput(file);
            writer.write(null, new IIOImage(opaque, null, null), smallest);
        }
    }
}
