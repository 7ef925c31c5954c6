using StudioKit.Kits.Cards;
using StudioKit.Sheets.Documents;
using UglyToad.PdfPig.Core;
using ZXing;

namespace StudioKit.Sheets.Tests.Cards;

public sealed class SettingsCodeTests
{
    /// <remarks>Read back from the finished PDF by two libraries that are not ours: PdfPig for the marks, ZXing for the code.</remarks>
    [Theory]
    [InlineData("A6")]
    [InlineData("ID-1")]
    public void The_code_of_a_printed_card_decodes_to_its_settings(string template)
    {
        var exposure = SamplePlan.White(SamplePlan.Framing("Φακός 55 mm at 1:1", 1)) with { SetUp = "Белый фон" };
        var plan = SamplePlan.Plan with { Exposures = [exposure] };
        var laid = ExposureCards.Lay(plan, CardTemplates.Of(template) with { Index = false }, Paper.A4, Pages.Stamp).Alone(Pages.Stamp);
        laid.Problems.Should().BeEmpty();
        using var document = Pages.Read(laid.Document);

        document.GetPages().Select(Decode).OfType<string>().First().Should().Be(string.Join(
            '\n',
            "Белый фон, Φακός 55 mm at 1:1",
            "f/16, 1/125 s, ISO 500",
            "Below: small flash A, bare, zoom 35 mm, 1/5 at 45 cm",
            "Above: small flash B, dome diffuser, 1/6.4 at 40 cm",
            "Fen kit, 2026-05-17, content 4f3a90c1"));
    }

    private static string? Decode(UglyToad.PdfPig.Content.Page page)
    {
        // Fifteen samples to a millimetre, six to a module, white where nothing is filled black; the patches are larger than any module and left out.
        const double samples = 15;
        var (wide, high) = ((int)(page.Width / Pages.PointsPerMillimetre * samples), (int)(page.Height / Pages.PointsPerMillimetre * samples));
        var luminance = Enumerable.Repeat((byte)255, wide * high).ToArray();
        foreach (var box in page.Paths.Where(path => path.IsFilled).Select(path => path.GetBoundingRectangle()!.Value).Where(box => Math.Min(box.Width, box.Height) < 5))
        {
            Fill(luminance, wide, high, box, samples / Pages.PointsPerMillimetre);
        }

        var reader = new BarcodeReaderGeneric { Options = { TryHarder = true, PossibleFormats = [BarcodeFormat.QR_CODE], CharacterSet = "UTF-8" } };
        return reader.Decode(new RGBLuminanceSource(luminance, wide, high, RGBLuminanceSource.BitmapFormat.Gray8))?.Text;
    }

    private static void Fill(byte[] luminance, int wide, int high, PdfRectangle box, double scale)
    {
        for (var y = (int)Math.Round(box.Bottom * scale); y < (int)Math.Round(box.Top * scale); y++)
        {
            var row = (high - 1 - y) * wide;
            luminance.AsSpan(row + (int)Math.Round(box.Left * scale), (int)Math.Round((box.Right - box.Left) * scale)).Clear();
        }
    }
}
