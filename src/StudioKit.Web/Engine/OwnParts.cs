using StudioKit.Kits;
using StudioKit.Web.Results;

namespace StudioKit.Web.Engine;

/// <summary>The parts library as the kit in hand sees it: parts that lie beside it first, then those that come with the page.</summary>
internal sealed class OwnParts
{
    private PartTexts _beside = new(new Dictionary<string, string>());

    /// <summary>Where parts are looked up.</summary>
    public PartsLibrary Library { get; private set; } = PartsLibrary.Embedded;

    /// <summary>Takes the parts of another kit in place of those of the one before.</summary>
    public PartTexts Take(PartTexts beside)
    {
        (_beside, Library) = (beside, beside.Texts.Count == 0 ? PartsLibrary.Embedded : PartsLibrary.FromTexts(beside.Texts));
        return _beside;
    }

    /// <summary>Which parts a kit names.</summary>
    public static PartNames Of(PartNamesRequest request)
    {
        var read = KitReader.Parse(request.Text, "kit.yaml", PartsLibrary.FromTexts(request.Parts));
        return new PartNames([.. read.NamedParts], [.. read.MissingParts]);
    }
}
