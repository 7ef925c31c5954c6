using StudioKit.FieldFiles.Metadata;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Tests.Metadata;

/// <summary>Blocks are those of CIPA DC-008, ISO/IEC 10918-1, ISO/IEC 15948, TIFF 6.0, ISO 16684-1 and IPTC IIM 4.2.</summary>
public sealed class CleanPictureTests : IDisposable
{
    private const double Latitude = 52.61234;
    private const double Longitude = -21.54321;
    private const string Word = "Quillmere";
    private const TellingMetadata Everything =
        TellingMetadata.Position | TellingMetadata.SerialNumber | TellingMetadata.MakerNote | TellingMetadata.EmbeddedPicture | TellingMetadata.Text;

    private static readonly PlaceTraces Traces =
        new(Latitude, Longitude, Word, TellingPicture.BodySerial, TellingPicture.LensSerial, TellingPicture.Owner, "2026:05:09");

    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Theory]
    [InlineData("a.jpg", false)]
    [InlineData("a.jpg", true)]
    [InlineData("a.png", false)]
    [InlineData("a.png", true)]
    [InlineData("a.tif", false)]
    [InlineData("a.tif", true)]
    public void Nothing_of_place_serial_numbers_or_names_is_left_in_a_clean_copy(string name, bool bigEndian)
    {
        var original = Original(name, bigEndian);
        Traces.In(File.ReadAllBytes(original)).Should().HaveCountGreaterThan(5, "or the search could find nothing at all");

        Traces.In(File.ReadAllBytes(Clean(original))).Should().BeEmpty();
    }

    [Theory]
    [InlineData("a.jpg", false)]
    [InlineData("a.png", true)]
    [InlineData("a.tif", false)]
    [InlineData("a.tif", true)]
    public void A_clean_copy_shows_the_same_pixels_and_keeps_the_numbers_of_its_exposure(string name, bool bigEndian)
    {
        var original = Original(name, bigEndian);

        var clean = Clean(original);

        Pixels(clean).Should().Equal(Pixels(original));
        using var picture = FramePicture.Open(clean).Value!;
        picture.Settings.Shutter!.Value.Seconds.Should().BeApproximately(0.005, 1e-9);
        picture.Settings.Iso!.Value.Value.Should().Be(100);
        picture.Settings.FocalLength!.Value.Millimeters.Should().BeApproximately(90, 1e-9);
        picture.Settings.TakenLocal.Should().BeNull();
    }

    [Theory]
    [InlineData("a.jpg", Everything)]
    [InlineData("a.png", TellingMetadata.Position | TellingMetadata.SerialNumber | TellingMetadata.MakerNote | TellingMetadata.EmbeddedPicture | TellingMetadata.Text)]
    [InlineData("a.tif", TellingMetadata.Position | TellingMetadata.SerialNumber | TellingMetadata.MakerNote | TellingMetadata.Text)]
    public void An_original_is_known_by_what_it_tells_and_a_clean_copy_by_telling_nothing(string name, TellingMetadata tells)
    {
        var original = Original(name, false);

        CleanPicture.Look(original).Should().Be(tells);
        CleanPicture.Look(Clean(original)).Should().Be(TellingMetadata.None);
    }

    [Fact]
    public void A_clean_copy_of_a_clean_copy_is_the_same_file()
    {
        foreach (var name in new[] { "a.jpg", "a.png", "a.tif" })
        {
            var clean = File.ReadAllBytes(Clean(Original(name, true)));
            File.WriteAllBytes(_scratch.File("again-" + name), clean);

            File.ReadAllBytes(Clean(_scratch.File("again-" + name))).Should().Equal(clean);
        }
    }

    /// <summary>An editor that writes a new block behind the old one leaves the old one in the file, where no tag leads to.</summary>
    [Fact]
    public void What_no_tag_leads_to_does_not_come_along()
    {
        var original = Original("a.tif", false);
        var bytes = File.ReadAllBytes(original);
        File.WriteAllBytes(original, [.. bytes, .. new byte[100], .. System.Text.Encoding.UTF8.GetBytes(Word)]);

        Traces.In(File.ReadAllBytes(Clean(original))).Should().BeEmpty();
    }

    /// <summary>TIFF 6.0 and ISO/IEC 15948 give each of these as numbers; who writes words into them hides them from a list of text tags.</summary>
    [Theory]
    [InlineData(274)]
    [InlineData(282)]
    [InlineData(296)]
    public void Words_in_a_place_for_numbers_do_not_come_along(ushort tag)
    {
        var exif = new TagBlock(false).Text(tag, Word + " sluice").Build();
        var jpeg = File.ReadAllBytes(Clean(Original("a.jpg", false)));
        File.WriteAllBytes(_scratch.File("b.jpg"), [.. jpeg[..2], .. TellingPicture.Segment(0xE1, [.. "Exif\0\0"u8, .. exif]), .. jpeg[2..]]);
        var png = File.ReadAllBytes(Clean(Original("a.png", false)));
        File.WriteAllBytes(_scratch.File("b.png"), [.. png[..33], .. TellingPicture.Chunk("gAMA", System.Text.Encoding.UTF8.GetBytes(Word)), .. png[33..]]);
        File.WriteAllBytes(_scratch.File("b.tif"), Grey(1, new byte[100]).Text(tag, Word + " sluice").Build(new byte[100], 273));

        foreach (var name in new[] { "b.jpg", "b.png", "b.tif" })
        {
            Traces.In(File.ReadAllBytes(Clean(_scratch.File(name)))).Should().BeEmpty(name);
        }
    }

    /// <summary>A strip of a TIFF that is a JPEG (TIFF technical note 2) may have a comment of its own.</summary>
    [Fact]
    public void A_strip_that_speaks_for_itself_is_refused()
    {
        byte[] strip = [0xFF, 0xD8, .. TellingPicture.Segment(0xFE, System.Text.Encoding.UTF8.GetBytes(Word)), .. File.ReadAllBytes(Clean(Original("a.jpg", false)))[2..]];

        CleanPicture.Copy(new MemoryStream(Grey(7, strip).Build(strip, 273)), "strips.tif", Stream.Null)!.Code.Should().Be("FLD371");
    }

    [Theory]
    [InlineData("a.jpg")]
    [InlineData("a.png")]
    [InlineData("a.tif")]
    public void A_damaged_picture_gives_a_copy_that_tells_no_place_or_a_sentence_and_never_crashes(string name)
    {
        var bytes = File.ReadAllBytes(Original(name, true));
        Gen.Select(Gen.Select(Gen.Int[0, bytes.Length - 1], Gen.Byte).Array[1, 6], Gen.Int[0, bytes.Length]).Sample(
            (changes, length) =>
            {
                var damaged = bytes[..Math.Max(1, length)];
                foreach (var (place, value) in changes.Where(change => change.Item1 < damaged.Length))
                {
                    damaged[place] = value;
                }

                using var target = new MemoryStream();
                var refused = CleanPicture.Copy(new MemoryStream(damaged), name, target);

                // A TIFF's damaged pointer can call any of its bytes the picture.
                return refused is not null || name == "a.tif" || !Traces.In(target.ToArray()).Any(trace => trace.StartsWith("a name", StringComparison.Ordinal));
            },
            iter: RandomFiles.Count);
    }

    [Fact]
    public void A_file_that_is_no_picture_is_refused_by_name()
    {
        var refusal = CleanPicture.Copy(new MemoryStream([.. "no picture"u8]), "note.txt", Stream.Null)!;

        (refusal.Code, refusal.Subject).Should().Be(("FLD371", "note.txt"));
    }

    private static TagBlock Grey(ushort coding, byte[] strip) => new TagBlock(false)
        .Short(256, 10).Short(257, 10).Short(258, 8).Short(259, coding).Short(262, 1).Short(277, 1).Short(278, 10).Long(279, (uint)strip.Length);

    private string Original(string name, bool bigEndian)
    {
        new TellingPicture(Latitude, Longitude, Word, bigEndian).Save(_scratch.File(name));
        return _scratch.File(name);
    }

    private string Clean(string original)
    {
        var path = _scratch.File("clean-" + Path.GetFileName(original));
        using var source = File.OpenRead(original);
        using var target = File.Create(path);
        CleanPicture.Copy(source, original, target).Should().BeNull();
        return path;
    }

    private static byte[] Pixels(string path)
    {
        using var picture = FramePicture.Open(path).Value!;
        var pixels = new byte[picture.Width * picture.Height * 4];
        picture.Read(band => band.Rgba.AsSpan(0, band.Rows * picture.Width * 4).CopyTo(pixels.AsSpan(band.FirstRow * picture.Width * 4))).Should().BeNull();
        return pixels;
    }
}
