using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Scale;

namespace StudioKit.FieldFiles.Tests.Scale;

public sealed class ScaleSidecarTests : IDisposable
{
    private static readonly RecordedScale Scale = new()
    {
        MicrometresPerPixel = 8.789062,
        RelativeUncertainty = 0.0125,
        BarLengthMicrometres = 5000,
        Pixels = new PixelDimensions(8192, 5464),
        Source = "beetle & <sundew> 7.jpg",
        Origin = "Framing 'reed 55 at 1:2' of kit 'Fen edge': magnification 0.5.",
        Kit = "Fen edge",
        Framing = "reed 55 at 1:2",
        Magnification = 0.5,
    };

    private readonly ScratchFolder _scratch = new();

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void What_a_scale_was_worked_out_from_can_be_read_back()
    {
        File.WriteAllBytes(_scratch.File("a.jpg.xmp"), ScaleSidecar.Write(Scale, "5 mm"));

        ScaleSidecar.ReadBeside(_scratch.File("a.jpg")).Should().Be(Scale);
    }

    /// <summary>What XML can hold: Extensible Markup Language 1.0, production 2; a file's name may hold anything but a slash and nothing.</summary>
    [Fact]
    public void Names_with_characters_that_no_XML_holds_are_told_without_them()
    {
        var odd = Scale with { Source = "red\u001B[31m \U0001F577 \uFFFF\uD800.jpg", Framing = "a\u0001b \U0001F577", Origin = "\u0002c" };

        File.WriteAllBytes(_scratch.File("a.jpg.xmp"), ScaleSidecar.Write(odd, "5 mm"));

        ScaleSidecar.ReadBeside(_scratch.File("a.jpg")).Should().Be(odd with { Source = "red[31m \U0001F577 .jpg", Framing = "ab \U0001F577", Origin = "c" });
    }

    [Fact]
    public void A_scale_holds_only_for_a_picture_of_its_own_size_whichever_way_it_is_turned()
    {
        Scale.HoldsFor(new PixelDimensions(5464, 8192)).Should().BeTrue();
        Scale.HoldsFor(new PixelDimensions(4096, 2732)).Should().BeFalse();
    }

    /// <summary>Other programs keep their edits in sidecars of the same name, and a file may be damaged or made to do harm.</summary>
    [Theory]
    [InlineData("")]
    [InlineData("not XML at all")]
    [InlineData("<a xmlns='urn:studiokit:scale#'><MicrometresPerPixel>-1</MicrometresPerPixel></a>")]
    [InlineData("<a xmlns='urn:studiokit:scale#'><MicrometresPerPixel>NaN</MicrometresPerPixel></a>")]
    [InlineData("<x:xmpmeta xmlns:x='adobe:ns:meta/'><edits exposure='+0.5'/></x:xmpmeta>")]
    [InlineData("<!DOCTYPE a [<!ENTITY b SYSTEM 'file:///etc/hostname'>]><a xmlns='urn:studiokit:scale#'><MicrometresPerPixel>1</MicrometresPerPixel><Origin>&b;</Origin></a>")]
    public void What_is_no_sidecar_of_ours_tells_nothing(string contents)
    {
        File.WriteAllText(_scratch.File("a.jpg.xmp"), contents);

        ScaleSidecar.ReadBeside(_scratch.File("a.jpg")).Should().BeNull();
    }

    [Fact]
    public void A_picture_without_a_sidecar_has_no_scale_recorded() => ScaleSidecar.ReadBeside(_scratch.File("none.jpg")).Should().BeNull();
}
