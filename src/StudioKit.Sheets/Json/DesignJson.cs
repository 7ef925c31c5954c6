using StudioKit.Kits;
using StudioKit.Kits.Exploring;
using StudioKit.Planning.Exploring;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>Designs that a kit leaves open, as JSON.</summary>
public static class DesignJson
{
    /// <summary>What a search found.</summary>
    /// <param name="json">The document.</param>
    /// <param name="result">The search.</param>
    /// <param name="isUsual">Whether the kit marks nothing as open.</param>
    public static void Write(JsonReport json, DesignSearchResult result, bool isUsual)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(result);
        json.Text("kit", result.Space.AsWritten.Kit!.Name)
            .Text("contentHash", result.Space.AsWritten.ContentHash)
            .Texts("measures", result.Aim.Measures.Select(measure => MemberText.Of(measure)))
            .Texts("limits", result.Aim.Limits.Select(limit => limit.Text))
            .Text("currency", DesignText.CurrencyOf(result))
            .Flag("usualChoices", isUsual)
            .List("choices", result.Space.Choices, choice => Write(json, choice))
            .Section("asWritten", () => Figures(json.Text("design", result.Space.Own.ToString()).Text("verdict", MemberText.Of(result.Own.Verdict)), result.Own.Figures))
            .List("designs", result.Shown, design => Write(json, design, result))
            .List("effects", result.Effects, effect => Write(json, effect, result))
            .Section("search", () => Tried(json, result));
    }

    private static void Write(JsonReport json, DesignChoice choice) => json
        .Text("name", choice.Name)
        .List("options", choice.Options, option => json.Text("name", option.Name).Flag("asWritten", option.IsOwn).Amount("price", option.Price));

    private static void Write(JsonReport json, ShownDesign design, DesignSearchResult result)
    {
        json.Count("number", design.Number).Text("design", design.Code.ToString());
        Figures(json, design.Figures);
        json.List("changes", design.Changes, change => json.Text("choice", change.Choice.Name).Text("option", change.Option.Name))
            .Text("against", DesignText.AgainstOwn(design, result))
            .Texts("alike", design.Alike.Select(code => code.ToString()))
            .Flag("comparedWithEverySingleChange", design.IsClosed);
    }

    private static void Write(JsonReport json, ChoiceEffect effect, DesignSearchResult result)
    {
        json.Text("choice", effect.Choice.Name).Number("share", effect.Share).Count("compared", effect.Compared).Count("doNotStand", effect.Spoils);
        foreach (var (measure, largest) in result.Aim.Measures.Zip(effect.Largest))
        {
            json.Number("largest" + Capital(Key(measure)), largest);
        }
    }

    private static void Tried(JsonReport json, DesignSearchResult result) => json
        .Count("tried", result.Count)
        .Number("of", result.Space.Count)
        .List("verdicts", result.Tried, tally => json.Text("verdict", MemberText.Of(tally.Verdict)).Count("count", tally.Count))
        .List("failing", result.Failing, tally => json.Text("check", CheckText.Name(tally.Check.Kind, tally.Check.Parts)).Count("count", tally.Count))
        .Texts("cannotBe", result.CannotBe)
        .Count("seed", result.Seed)
        .Flag("complete", result.IsComplete)
        .Flag("noSingleChangeImproves", result.IsClosed)
        .Flag("stopped", result.IsStopped);

    private static void Figures(JsonReport json, DesignFigures? figures)
    {
        foreach (var measure in DesignFigures.Measures)
        {
            json.Number(Key(measure), figures?[measure]);
        }
    }

    /// <summary>Key of a measure, which ends in its unit.</summary>
    private static string Key(DesignMeasure measure) => measure switch
    {
        DesignMeasure.Mass => "massG",
        DesignMeasure.Price => "price",
        DesignMeasure.WhiteMargin => "whiteMarginStops",
        DesignMeasure.FirstWhite => "firstWhiteProbability",
        DesignMeasure.Flashes => "flashesPerSet",
        DesignMeasure.Energy => "energyWh",
        DesignMeasure.PackedLength => "packedLengthMm",
        DesignMeasure.Pieces => "pieces",
        DesignMeasure.Smear => "smearUm",
        DesignMeasure.Depth => "depthMm",
        DesignMeasure.Wind => "windMPerS",
        DesignMeasure.Cards => "cards",
        _ => throw new ArgumentOutOfRangeException(nameof(measure), measure, "Not a measure of designs."),
    };

    private static string Capital(string key) => char.ToUpperInvariant(key[0]) + key[1..];
}
