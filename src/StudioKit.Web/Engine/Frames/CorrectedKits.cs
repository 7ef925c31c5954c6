using StudioKit.Field.Calibration;
using StudioKit.Field.Pictures;
using StudioKit.Kits;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Frames;

/// <summary>The corrections that are kept beside kits, by the kit's name as in their files.</summary>
internal sealed class CorrectedKits
{
    private Dictionary<string, (KitCorrection Correction, string Text)> _kept = new(StringComparer.Ordinal);

    /// <summary>Takes corrections in place of all that were kept.</summary>
    public KeptCorrections Keep(CorrectionTexts request)
    {
        var read = request.Texts.Select(text => (Text: text, Read: KitCorrectionFile.Read("correction file", text))).ToList();
        _kept = read.Where(entry => entry.Read.IsSound).GroupBy(entry => entry.Read.Value!.Kit, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => (group.Last().Read.Value!, group.Last().Text), StringComparer.Ordinal);
        return new KeptCorrections(
            [.. _kept.Values.Select(entry => new KeptCorrection(entry.Correction.Kit, CorrectionTelling.Of(entry.Correction), entry.Text))],
            PictureTelling.Faults(read.SelectMany(entry => entry.Read.Diagnostics)));
    }

    /// <summary>What a correction file holds.</summary>
    public static CorrectionAnswer Read(CorrectionRequest request)
    {
        var read = KitCorrectionFile.Read(request.FileName, request.Text);
        return read.IsSound ? new CorrectionAnswer(read.Value!.Kit, CorrectionTelling.Of(read.Value), "") : new CorrectionAnswer("", "", string.Join(' ', PictureTelling.Faults(read.Diagnostics)));
    }

    /// <summary>A kit with what is kept for it.</summary>
    public KitReadResult Of(KitReadResult read) => read.Kit is { } kit && _kept.TryGetValue(kit.Name, out var kept) ? kept.Correction.ApplyTo(read, kept.Text) : read;

    /// <summary>Tone curve that is kept for a kit's camera; none where none was learnt.</summary>
    public ToneCurve? CurveOf(string kitName) => _kept.TryGetValue(kitName, out var kept) ? kept.Correction.ToneCurve : null;
}
