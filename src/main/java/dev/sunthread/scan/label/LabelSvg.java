package dev.sunthread.scan.label;

import java.io.StringWriter;
import java.util.Locale;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import uk.org.okapibarcode.graphics.Rectangle;

/** Draws one label as SVG, in its true size. */
public final class LabelSvg {

    private static final XMLOutputFactory WRITERS = XMLOutputFactory.newInstance();

    private final XMLStreamWriter xml;

    private LabelSvg(XMLStreamWriter xml) {
        this.xml = xml;
    }

    /** The label as an SVG document. @throws dev.sunthread.kernel.Refused if it can't be read at that size */
    public static String of(Label label, LabelSize size, Symbology symbology) {
        Layout layout = Layout.of(label, size, symbology);
        StringWriter text = new StringWriter();
        try {
            new LabelSvg(WRITERS.createXMLStreamWriter(text)).write(layout, label, size);
        } catch (XMLStreamException e) {
            throw new IllegalStateException(e);
        }
        return text.toString();
    }

    private void write(Layout layout, Label label, LabelSize size) throws XMLStreamException {
        xml.writeStartElement("svg");
        xml.writeDefaultNamespace("http://www.w3.org/2000/svg");
        attribute("width", size.width() + "mm");
        attribute("height", size.height() + "mm");
        attribute("viewBox", "0 0 " + size.width() + " " + size.height());
        element("title", label.heading() + " " + label.name());
        xml.writeEmptyElement("rect");
        attribute("width", number(size.width()));
        attribute("height", number(size.height()));
        attribute("fill", "#fff");
        xml.writeEmptyElement("path");
        attribute("d", dark(layout));
        attribute("shape-rendering", "crispEdges");
        for (Layout.Text line : layout.texts()) {
            write(line);
        }
        xml.writeEndElement();
        xml.flush();
    }

    private void write(Layout.Text line) throws XMLStreamException {
        xml.writeStartElement("text");
        attribute("x", number(line.x()));
        attribute("y", number(line.y()));
        attribute("font-size", number(line.size()));
        attribute("font-family", "sans-serif");
        xml.writeCharacters(line.text());
        xml.writeEndElement();
    }

    private void element(String name, String text) throws XMLStreamException {
        xml.writeStartElement(name);
        xml.writeCharacters(text);
        xml.writeEndElement();
    }

    private void attribute(String name, String value) throws XMLStreamException {
        xml.writeAttribute(name, value);
    }

    private static String dark(Layout layout) {
        StringBuilder path = new StringBuilder();
        for (Rectangle dark : layout.code().dark()) {
            path.append('M')
                    .append(number(LabelSize.EDGE + dark.x * layout.module()))
                    .append(' ')
                    .append(number(LabelSize.EDGE + dark.y * layout.module()))
                    .append('h')
                    .append(number(dark.width * layout.module()))
                    .append('v')
                    .append(number(dark.height * layout.module()))
                    .append('h')
                    .append(number(-dark.width * layout.module()))
                    .append('z');
        }
        return path.toString();
    }

    private static String number(double millimetres) {
        return String.format(Locale.ROOT, "%.4f", millimetres);
    }
}
