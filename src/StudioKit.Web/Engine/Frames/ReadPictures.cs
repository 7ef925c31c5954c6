using StudioKit.Field;
using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine.Frames;

/// <summary>Reads pictures and keeps what was read, so that a changed power or framing needs no second reading.</summary>
/// <param name="picture">The picture in hand.</param>
/// <param name="corrections">For the tone curves that are kept.</param>
internal sealed class ReadPictures(IDecodedPicture picture, CorrectedKits corrections)
{
    // A map of a hundred thousand points each; more frames than this no ladder has.
    private const int MostKept = 24;

    private readonly Dictionary<string, FrameAnalysis> _read = new(StringComparer.Ordinal);
    private readonly Queue<string> _order = new();

    /// <summary>Reads the picture in hand.</summary>
    public ReadPicture Read(PictureRequest request)
    {
        var head = PictureHead.Of(picture.Head);
        if (picture.Width == 0 || picture.Height == 0)
        {
            return new ReadPicture("", "", "", 0, 0, [PictureTelling.Refusal(request.Name, head.Kind)]);
        }

        var rows = new DecodedRows(request.Name, picture, head);
        var curve = request.KitName.Length > 0 ? corrections.CurveOf(request.KitName) : null;
        var read = request.IsBare ? TestFrame.AnalyseBarePanel(rows, curve) : TestFrame.Analyse(rows, curve);
        if (!read.IsSound)
        {
            return new ReadPicture("", "", "", 0, 0, PictureTelling.Faults(read.Diagnostics));
        }

        Keep(request.Picture, read.Value);
        return PictureTelling.Of(read.Value);
    }

    /// <summary>What was read of a picture.</summary>
    public FieldResult<FrameAnalysis> Of(string key) => _read.TryGetValue(key, out var read)
        ? read
        : new FieldDiagnostic("FLD008", "picture", "It is no longer in memory.", "Choose the file again.");

    /// <summary>Map of a picture: red, green, blue and 255 of each point.</summary>
    /// <exception cref="ArgumentException">No such picture was read.</exception>
    public byte[] Map(string key) => _read.TryGetValue(key, out var read) ? HatchedFrame.Of(read).Rgba : throw new ArgumentException($"No picture '{key}' was read.", nameof(key));

    private void Keep(string key, FrameAnalysis read)
    {
        if (!_read.ContainsKey(key))
        {
            _order.Enqueue(key);
        }

        _read[key] = read;
        while (_order.Count > MostKept)
        {
            _read.Remove(_order.Dequeue());
        }
    }
}
