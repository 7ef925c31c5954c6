using StudioKit.Kits.Description;
using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Exploring;

/// <summary>Keys of what a kit leaves open.</summary>
internal static class ExploreSections
{
    private const int MostMeasures = 4;

    /// <summary>How far a measure may go.</summary>
    public static readonly ValueKind<DesignLimit> Limit = new("a limit", DesignLimitText.Example, DesignLimitText.Read, limit => limit.Text);

    /// <summary>The path of a key or entry.</summary>
    public static readonly ValueKind<string> KeyPath = new("a path in the kit", "panel.width", text => WordText.Line(text, Longest), value => value);

    /// <summary>What stands under a key.</summary>
    public static readonly ValueKind<string> Written = new("a value as the kit has it", "500 mm", text => WordText.Line(text, Longest), value => value) { JsonType = "number" };

    private const int Longest = 400;

    private static readonly Section<DesignWriting> Writing = new Section<DesignWriting>("writing", "A value that an option writes.", new("", ""))
        .Required("key", "Path of the key, e.g. 'frame.pipe' or 'set-ups[white].lights[0].distance'; an entry is named in brackets or counted from 0.")
            .Value(KeyPath, (writing, value) => writing with { Key = value }, null)
        .Required("value", "The value, as it would stand in the kit; in quotation marks a whole entry, e.g. '{flash: reed, role: above, distance: 40 cm}'.")
            .Value(Written, (writing, value) => writing with { Value = value }, null);

    private static readonly Section<DesignOptionSpec> Option = new Section<DesignOptionSpec>("option", "One way to settle a choice; without anything to write it is the kit as it stands.", new() { Name = "" })
        .Required("name", "Its name in results.").Name((option, value) => option with { Name = value })
        .Many("writes", Writing, "What it writes.", (option, value) => option with { Writes = value })
        .Optional("leave-out", "Paths of keys and entries that it takes away, e.g. 'holders[short stand]'.").Values(KeyPath, (option, value) => option with { LeaveOut = [.. value] }, null)
        .Optional("price", "What it costs beside what is cut and built, in the stock's currency.", "0", "100000")
            .Price((option, value) => option with { Price = value }, option => option.Price);

    private static readonly Section<DesignChoiceSpec> Choice = new Section<DesignChoiceSpec>(
        "choice", "Something that is left open: values of a key, a range of them, things to leave out, or options that write several keys at once.", new() { Name = "" }, namedAmong: "choices")
        .Required("name", "Its name in results; each choice has its own.").Name((choice, value) => choice with { Name = value })
        .Optional("key", "Path of the key that is open, e.g. 'panel.part' or 'set-ups[white].lights[0].distance'.").Value(KeyPath, (choice, value) => choice with { Key = value }, null)
        .Optional("values", "Values of the key.").Values(Written, (choice, value) => choice with { Values = [.. value] }, null)
        .Optional("from", "First value of a range, e.g. '400 mm'.").Value(Written, (choice, value) => choice with { From = value }, null)
        .Optional("to", "Last value of a range, in the same unit.").Value(Written, (choice, value) => choice with { To = value }, null)
        .Optional("step", "Step of a range, in the same unit.").Value(Written, (choice, value) => choice with { Step = value }, null)
        .Optional("leave-out", "Paths of keys and entries that stay, or are left out together, e.g. 'holders[short stand]'.")
            .Values(KeyPath, (choice, value) => choice with { LeaveOut = [.. value] }, null)
        .Many("options", Option, "Options.", (choice, value) => choice with { Options = value })
        .Check(Unsettled)
        .Check(BadRange)
        .Check(TwiceNamed);

    public static readonly Section<ExploreSpec> Explore = new Section<ExploreSpec>("explore", "What the kit leaves open, and how its designs are compared.", new())
        .Optional("measures", "What designs are compared by, two to four.")
            .Choices<DesignMeasure>("a measure of designs", (explore, value) => explore with { Measures = value })
        .Optional("limits", "How far measures may go, e.g. 'mass 3 kg' or 'white-margin 1/3 stop'.").Values(Limit, (explore, value) => explore with { Limits = [.. value] }, null)
        .Many("choices", Choice, "What is left open; where there are none, what usually is.", (explore, value) => explore with { Choices = value })
        .Check(Measured);

    private static Fault? Measured(ExploreSpec explore) =>
        explore.Measures.Distinct().Count() < explore.Measures.Count ? new Fault("measures", "A measure is named twice.", "Name each once.")
        : explore.Measures.Count is 1 or > MostMeasures ? new Fault("measures", "Designs are compared by two to four measures.", "Write for example 'measures: [mass, white-margin]'.")
        : null;

    private static Fault? Unsettled(DesignChoiceSpec choice)
    {
        var (hasRange, forms) = (choice.From is not null || choice.To is not null || choice.Step is not null, 0);
        forms += choice.Values.Count > 0 ? 1 : 0;
        forms += hasRange ? 1 : 0;
        forms += choice.LeaveOut.Count > 0 ? 1 : 0;
        forms += choice.Options.Count > 0 ? 1 : 0;
        var ofKey = choice.Values.Count > 0 || hasRange;
        return (forms, ofKey, choice.Key) switch
        {
            (0, _, _) => new Fault("name", $"'{choice.Name}' is empty: nothing is left open.", "Give 'key' with 'values' or with 'from', 'to' and 'step'; or 'leave-out'; or 'options'."),
            ( > 1, _, _) => new Fault("name", $"'{choice.Name}' is left open in more than one way.", "Give one of 'values', 'from' to 'to', 'leave-out' and 'options'; make a second choice of the other."),
            (_, true, null) => new Fault(choice.Values.Count > 0 ? "values" : "from", $"'{choice.Name}' has values and does not say of which key.", "Write its path, e.g. 'key: panel.part'."),
            (_, false, not null) => new Fault("key", $"'{choice.Name}' has a key and no values of it.", "Write them, e.g. 'values: [2 mm, 3 mm]', or 'from', 'to' and 'step'."),
            _ => null,
        };
    }

    private static Fault? BadRange(DesignChoiceSpec choice) =>
        choice.From is null && choice.To is null && choice.Step is null ? null
        : DesignRange.Problem(choice) is { } problem ? new Fault(choice.From is null ? "name" : "from", problem, "Write for example 'from: 400 mm', 'to: 600 mm', 'step: 50 mm'.")
        : null;

    private static Fault? TwiceNamed(DesignChoiceSpec choice) =>
        choice.Options.GroupBy(option => option.Name, StringComparer.Ordinal).FirstOrDefault(named => named.Count() > 1) is { } twice
            ? new Fault("options", $"'{choice.Name}' has two options named '{twice.Key}'.", "Give each a name of its own.")
        : choice.Values.GroupBy(value => value, StringComparer.Ordinal).FirstOrDefault(same => same.Count() > 1) is { } again
            ? new Fault("values", $"'{choice.Name}' has the value '{again.Key}' twice.", "Write each once.")
        : null;
}
