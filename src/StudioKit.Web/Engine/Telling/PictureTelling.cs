using StudioKit.Field;
using StudioKit.Field.Analysis;
using StudioKit.Field.Ladders;
using StudioKit.Field.Pictures;
using StudioKit.Physics.Exposure;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Telling;

/// <summary>A picture that was read, in words, or why it was not.</summary>
internal static class PictureTelling
{
    public static ReadPicture Of(FrameAnalysis frame) => new(
        FormattableString.Invariant($"{frame.Width} × {frame.Height} pixels"), Settings(frame.Settings), Power(frame),
        HatchedFrame.Of(frame) is var map ? map.Width : 0, map.Height, []);

    /// <summary>Why a picture cannot be read here.</summary>
    public static string Refusal(string name, PictureKind kind) => kind switch
    {
        PictureKind.Empty => $"{name}: the file is empty.",
        PictureKind.Jpeg or PictureKind.Png => $"{name}: the picture is damaged, or larger than this browser opens. Copy it from the card again, or save a smaller one.",
        PictureKind.TiffOrRaw => $"{name}: this is a TIFF picture or a raw file, which this browser does not open. Save it as JPEG or PNG first; the command line reads TIFF.",
        PictureKind.Raw => $"{name}: this is a raw file. Save the picture as JPEG or PNG first.",
        PictureKind.BaseMedia => $"{name}: this is a HEIF or AVIF picture, a film, or a raw file, which this browser does not open. Save it as JPEG or PNG first.",
        _ => $"{name}: this is no picture that can be read. JPEG and PNG can be.",
    };

    /// <summary>What is wrong, one sentence each.</summary>
    public static IReadOnlyList<string> Faults(IEnumerable<FieldDiagnostic> faults) => [.. faults.Select(fault => ProblemText.Of($"{fault.Subject}: {fault.Message}", PageHints.Of(fault)))];

    private static string Settings(FrameSettings settings) => string.Join(
        ", ",
        new[] { settings.MarkedAperture?.Nominal, settings.MarkedIso?.Nominal, settings.FocalLength is { } focal ? FormattableString.Invariant($"{focal.Millimeters:0} mm") : null, settings.Camera }
            .Where(word => !string.IsNullOrEmpty(word)));

    private static string Power(FrameAnalysis frame) => (LadderPowers.Of(frame.Settings.Description) ?? LadderPowers.Of(Path.GetFileNameWithoutExtension(frame.Path))) is { } power
        ? new DialMark(power, default).Nominal
        : "";
}
