using StudioKit.Kits.Forms;

namespace StudioKit.Web.Engine.Telling;

/// <summary>What may be typed into a field, in a sentence.</summary>
internal static class FieldText
{
    public static string Of(KitField field) => field.Noun is not { } noun ? "" : string.Join(" ", new[] { Takes(field, noun), Bounds(field), Units(field), Uncertainty(field) }.Where(part => part.Length > 0));

    private static string Takes(KitField field, string noun) => field.Example is { Length: > 0 } example
        ? $"Takes {noun}, e.g. {example}{(field.IsList ? "; several may be given" : "")}."
        : $"Takes {noun}{(field.IsList ? "; several may be given" : "")}.";

    private static string Bounds(KitField field) => (field.Least, field.Most) switch
    {
        ({ } least, { } most) => $"From {least} to {most}.",
        ({ } least, null) => $"At least {least}.",
        (null, { } most) => $"At most {most}.",
        _ => "",
    };

    private static string Units(KitField field) => field.Units.Count > 1 ? $"Units: {string.Join(", ", field.Units)}." : "";

    private static string Uncertainty(KitField field) => field.TakesUncertainty ? "An uncertainty may follow, e.g. ± 5 %." : "";
}
