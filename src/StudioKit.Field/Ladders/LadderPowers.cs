using System.Globalization;
using System.Text.RegularExpressions;
using StudioKit.Field.Analysis;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;

namespace StudioKit.Field.Ladders;

/// <summary>Which power each frame of a ladder was taken at: as named in turn, or read from the frame's description or file name.</summary>
public static partial class LadderPowers
{
    private const double Weakest = 1024;

    /// <summary>Frames with the powers named for them.</summary>
    /// <param name="frames">The frames.</param>
    /// <param name="powers">A power for each, in the same order, e.g. <c>1/16</c>; several may stand in one text, parted by commas.</param>
    public static FieldResult<IReadOnlyList<LadderFrame>> AsNamed(IReadOnlyList<FrameAnalysis> frames, IReadOnlyList<string> powers)
    {
        ArgumentNullException.ThrowIfNull(frames);
        ArgumentNullException.ThrowIfNull(powers);
        powers = [.. powers.SelectMany(text => text.Split(',', StringSplitOptions.TrimEntries))];
        if (frames.Count != powers.Count)
        {
            return new FieldDiagnostic("FLD106", "power ladder", $"{Counted(frames.Count, "frame")} but {Counted(powers.Count, "power")}.", "Name one power for each frame, in the same order.") { Help = FieldHelp.Powers };
        }

        var rungs = new List<LadderFrame>();
        foreach (var (frame, text) in frames.Zip(powers))
        {
            if (!QuantityText.TryPower(text, out var power, out var problem))
            {
                return new FieldDiagnostic("FLD106", "power ladder", problem);
            }

            rungs.Add(new LadderFrame(ThirdStopSeries.FromMark(power), frame));
        }

        return FieldResult<IReadOnlyList<LadderFrame>>.Sound(rungs, []);
    }

    /// <summary>Frames with the powers that their descriptions or file names give, e.g. <c>panel-1-16.jpg</c>.</summary>
    /// <param name="frames">The frames.</param>
    public static FieldResult<IReadOnlyList<LadderFrame>> OfNames(IReadOnlyList<FrameAnalysis> frames)
    {
        ArgumentNullException.ThrowIfNull(frames);
        var powers = frames.Select(frame => Of(frame.Settings.Description) ?? Of(Path.GetFileNameWithoutExtension(frame.Path))).ToList();
        var faults = frames.Zip(powers).Where(pair => pair.Second is null).Select(pair => new FieldDiagnostic(
            "FLD107", pair.First.Path, "Neither its description nor its name tells one power.", "Name it like panel-1-16.jpg, or give the power of each frame.")
        { Help = FieldHelp.Powers }).ToList();
        return faults.Count > 0
            ? FieldResult<IReadOnlyList<LadderFrame>>.Refused(faults)
            : FieldResult<IReadOnlyList<LadderFrame>>.Sound([.. frames.Zip(powers, (frame, power) => new LadderFrame(power!.Value, frame))], []);
    }

    /// <summary>The one power that a text names; none where it names none or several.</summary>
    /// <param name="text">A description or a file name.</param>
    public static FlashPower? Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var found = Pattern().Matches(text.Length > 200 ? text[..200] : text).Select(match => double.Parse(match.Groups["part"].Value, CultureInfo.InvariantCulture))
            .Where(part => part is >= 1 and <= Weakest).Distinct().ToList();
        return found.Count == 1 ? ThirdStopSeries.FromMark(new FlashPower(1 / found[0])) : null;
    }

    private static string Counted(int count, string name) => $"{count} {name}{(count == 1 ? "" : "s")}";

    // One, a stroke or what stands for it in a name, and the part: 1/16, 1-16, 1_6.4, 1of32.
    [GeneratedRegex(@"(?<![\d.])1(?:/|-|_| of |of)(?<part>\d{1,4}(?:\.\d)?)(?![\d.]*\d)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Pattern();
}
