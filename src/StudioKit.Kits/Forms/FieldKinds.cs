using StudioKit.Kits.Description;
using StudioKit.Kits.Exploring;
using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Forms;

/// <summary>Sorts the kinds of values by what a form does with them.</summary>
internal static class FieldKinds
{
    private static readonly ValueKind[] Texts = [Kinds.Name, Kinds.Distribution, Kinds.Sentence, Kinds.Currency, Kinds.RadioGroup, DayText.Date, ExploreSections.KeyPath, ExploreSections.Written];
    private static readonly ValueKind[] Numbers = [Kinds.Ratio, Kinds.Factor, Kinds.Plain, Kinds.Price];
    private static readonly ValueKind[] Sizes = [Kinds.Size, Kinds.SensorSize, Kinds.SheetSize, Kinds.Box, Kinds.Pixels];
    private static readonly ValueKind[] Ranges = [Kinds.Apertures, Kinds.Isos, Kinds.Lights, Kinds.Hours, DayText.Active];

    private static readonly ValueKind[] Settings =
        [DayText.Latitude, DayText.Longitude, DownhillText.Kind, Kinds.Stops, Kinds.FNumber, Kinds.FNumberOrBest, Kinds.Shutter, Kinds.Iso, Kinds.Power, Kinds.GuideNumber, Kinds.ExposureValue, Kinds.Magnification, ExploreSections.Limit];

    public static FieldKind Of(KeyFacts facts) => facts.Kind is not { } kind ? FieldKind.Group
        : facts.RefersTo is not null ? FieldKind.Name
        : kind == Kinds.YesNo ? FieldKind.YesNo
        : kind.Words.Count > 0 ? FieldKind.Choice
        : kind == Kinds.Count ? FieldKind.WholeNumber
        : Array.IndexOf(Texts, kind) >= 0 ? FieldKind.Text
        : Array.IndexOf(Numbers, kind) >= 0 ? FieldKind.Number
        : Array.IndexOf(Sizes, kind) >= 0 ? FieldKind.Size
        : Array.IndexOf(Ranges, kind) >= 0 ? FieldKind.Range
        : Array.IndexOf(Settings, kind) >= 0 ? FieldKind.Setting
        : FieldKind.Quantity;
}
