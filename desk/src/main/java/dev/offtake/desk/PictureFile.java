package dev.offtake.desk;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** Turns a picture into the bytes of a file; needs no screen. */
final class PictureFile {
  /** Dots for each unit of the picture in a PNG: 200 dots to the inch on a page of 10 inches. */
  private static final int DOTS = 2;

  private static final String SVG = "http://www.w3.org/2000/svg";

  private PictureFile() {}

  /** A PNG. */
  static byte[] png(CurvePicture picture) throws IOException {
    int height = picture.height();
    BufferedImage image =
        new BufferedImage(DOTS * CurvePicture.WIDTH, DOTS * height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    try {
      g.scale(DOTS, DOTS);
      g.setColor(Ink.PAPER);
      g.fillRect(0, 0, CurvePicture.WIDTH, height);
      picture.draw(g);
    } finally {
      g.dispose();
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  /** An SVG with text as text. */
  static byte[] svg(CurvePicture picture) throws IOException {
    Document document = empty();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment("Drawn by Offtake");
    SVGGraphics2D g = new SVGGraphics2D(context, false);
    int height = picture.height();
    g.setSVGCanvasSize(new Dimension(CurvePicture.WIDTH, height));
    g.setColor(Ink.PAPER);
    g.fillRect(0, 0, CurvePicture.WIDTH, height);
    picture.draw(g);
    return written(g.getRoot());
  }

  /** Written without the document type that Batik would add: readers would look for it abroad. */
  private static byte[] written(Element root) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      Transformer writer = TransformerFactory.newInstance().newTransformer();
      writer.transform(new DOMSource(root), new StreamResult(out));
    } catch (TransformerException e) {
      throw new IOException("the picture cannot be written", e);
    }
    return out.toByteArray();
  }

  private static Document empty() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("the Java in use has no XML", e);
    }
  }
}
