using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using UglyToad.PdfPig;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class CataloguePlateSheetTests
{
    // The smallest grey picture that ITU-T T.81 allows to be written down: one block of 8 × 8 pixels, with the standard's own Huffman tables.
    private static readonly byte[] Jpeg = OneGreyBlock();

    /// <remarks>ISO 32000-1, 8.3.2.3: one default user space unit is 1/72 in, so a bar of 10 mm is 28.346 units long.</remarks>
    [Fact]
    public void A_bar_of_ten_millimetres_is_ten_millimetres_printed()
    {
        using var document = PdfDocument.Open(Written());

        var bar = document.GetPage(1).Paths.Select(path => path.GetBoundingRectangle()!.Value).Single(box => box.Height < 3);
        bar.Width.Should().BeApproximately(10 * Pages.PointsPerMillimetre, 0.01);
    }

    [Fact]
    public void The_picture_fills_exactly_its_place()
    {
        using var document = PdfDocument.Open(Written());

        var picture = document.GetPage(1).GetImages().Single().BoundingBox;
        picture.Width.Should().BeApproximately(40 * Pages.PointsPerMillimetre, 0.01);
        picture.Height.Should().BeApproximately(30 * Pages.PointsPerMillimetre, 0.01);
        picture.Left.Should().BeApproximately(20 * Pages.PointsPerMillimetre, 0.01);
        picture.Top.Should().BeApproximately((297 - 25) * Pages.PointsPerMillimetre, 0.01);
    }

    [Fact]
    public void Name_caption_and_scale_can_be_read()
    {
        using var document = PdfDocument.Open(Written());

        var words = Pages.Words(document.GetPage(1));
        words.Should().ContainInOrder("Dolomedes", "cf.", "plantarius").And.Contain("2026-05-09").And.ContainInOrder("5", "mm,", "2", "times", "life", "size");
        document.GetPage(1).Letters.Select(letter => letter.FontName).Distinct().Should().HaveCountGreaterThan(1, "a slanted name has a font of its own");
    }

    [Fact]
    public void A_picture_that_has_a_bar_of_its_own_is_given_no_second_one_and_what_is_left_out_is_printed()
    {
        using var document = PdfDocument.Open(Written(barLabel: "", note: "Left out, unreadable: moth.jpg."));

        document.GetPage(1).Paths.Select(path => path.GetBoundingRectangle()!.Value).Should().NotContain(box => box.Height < 3);
        Pages.Words(document.GetPage(1)).Should().ContainInOrder("Left", "out,", "unreadable:", "moth.jpg.").And.ContainInOrder("2", "times", "life", "size");
    }

    [Fact]
    public void The_same_plates_give_the_same_bytes() => Written().Should().Equal(Written());

    private static byte[] Written(string barLabel = "5 mm", string note = "") => CataloguePlateSheet.Write(new PlateBook(
        "Spiders of an invented fen", 210, 297, "Each portrait has its own scale.", new DateOnly(2026, 5, 10),
        [
            [
                new PlateFigure
                {
                    Place = new Bounds(20, 25, 60, 55), Jpeg = Jpeg, CaptionLeft = 20, CaptionWidth = 80, Name = "Dolomedes cf. plantarius", IsScientific = true,
                    Caption = ["female, adult", "boardwalk, 2026-05-09"], BarLength = 10, BarLabel = barLabel, ScaleText = "2 times life size",
                },
            ],
        ])
    {
        Note = note,
    }).Content.ToArray();

    // ITU-T T.81 with the head of T.871: SOI, APP0, DQT (all ones), SOF0 (baseline, three components), DHT with a single code each, SOS, and for each component one code for DC and one for the end of the block.
    // PDFsharp looks a little beyond the end of so small a file.
    private static byte[] OneGreyBlock() =>
    [
        0xFF, 0xD8,
        0xFF, 0xE0, 0x00, 0x10, .. "JFIF\0"u8, 0x01, 0x01, 0x00, 0x00, 0x01, 0x00, 0x01, 0x00, 0x00,
        0xFF, 0xDB, 0x00, 0x43, 0x00, .. Enumerable.Repeat((byte)1, 64),
        0xFF, 0xC0, 0x00, 0x11, 0x08, 0x00, 0x08, 0x00, 0x08, 0x03, 0x01, 0x11, 0x00, 0x02, 0x11, 0x00, 0x03, 0x11, 0x00,
        0xFF, 0xC4, 0x00, 0x14, 0x00, 0x01, .. new byte[15], 0x00,
        0xFF, 0xC4, 0x00, 0x14, 0x10, 0x01, .. new byte[15], 0x00,
        0xFF, 0xDA, 0x00, 0x0C, 0x03, 0x01, 0x00, 0x02, 0x00, 0x03, 0x00, 0x00, 0x3F, 0x00,
        0x03,
        0xFF, 0xD9, .. new byte[64],
    ];
}
