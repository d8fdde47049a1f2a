package org.standproud.web.sheet;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.util.Map;

/** A text as a QR code (ISO/IEC 18004) in vector form. */
final class QrSquare {

  private QrSquare() {}

  /**
   * The code as an SVG element, with the quiet zone of four modules that the standard requires.
   *
   * @param text plain ASCII text
   * @param sizeMm width and height in mm
   */
  static String svg(String text, int sizeMm) {
    BitMatrix modules = modules(text);
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      for (int x = 0; x < modules.getWidth(); x++) {
        if (modules.get(x, y)) {
          path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
        }
      }
    }
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%1$dmm\" height=\"%1$dmm\""
            .formatted(sizeMm)
        + " viewBox=\"0 0 %1$d %1$d\"><path fill=\"#000\" d=\"".formatted(modules.getWidth())
        + path
        + "\"/></svg>";
  }

  private static BitMatrix modules(String text) {
    try {
      return new QRCodeWriter()
          .encode(
              text,
              BarcodeFormat.QR_CODE,
              0,
              0,
              Map.of(
                  EncodeHintType.MARGIN,
                  4,
                  EncodeHintType.ERROR_CORRECTION,
                  ErrorCorrectionLevel.M));
    } catch (WriterException e) {
      throw new IllegalStateException("an id always fits a QR code", e);
    }
  }
}
