using System.CommandLine;
using System.CommandLine.Parsing;
using StudioKit.Cli.Usage;
using StudioKit.Field.Log;
using StudioKit.Kits.Quantities;

namespace StudioKit.Cli.Records;

/// <summary>Options that set the fields of a record: a field whose option is left out stays what it was.</summary>
internal sealed class RecordFields<T>(CommandHost host)
    where T : class
{
    private readonly List<(Option Option, Func<ParseResult, T, T> Set)> _fields = [];
    private readonly Dictionary<string, Func<T, T>> _clears = new(StringComparer.Ordinal);

    /// <summary>Names of the fields that can be emptied.</summary>
    public IEnumerable<string> Clearable => _clears.Keys;

    /// <summary>A field of words.</summary>
    public RecordFields<T> Words(string name, string description, Func<T, string, T> set, bool canBeEmpty = true) => Add(
        new Option<string?>(name) { Description = description, HelpName = "text" }, (record, value) => value is null ? record : set(record, value), canBeEmpty ? record => set(record, "") : null);

    /// <summary>A field of words that may be a number, which then has a point.</summary>
    public RecordFields<T> Value(string name, string description, Func<T, string, T> set, bool canBeEmpty = true)
    {
        var option = new Option<string?>(name) { Description = description, HelpName = "text" };
        option.Validators.Add(result => RefuseComma(name, result));
        return Add(option, (record, value) => value is null ? record : set(record, value), canBeEmpty ? record => set(record, "") : null);
    }

    /// <summary>Refuses a number with a comma.</summary>
    public static void RefuseComma(string name, SymbolResult result)
    {
        if (result.Tokens is [var token] && NumberOption.HasDecimalComma(token.Value))
        {
            result.AddError($"{name}: '{token.Value}' has a comma; write {token.Value.Replace(',', '.')}.");
        }
    }

    /// <summary>A field of several names; those given take the place of all that were there.</summary>
    public RecordFields<T> Names(string name, string description, Func<T, IReadOnlyList<string>, T> set) =>
        Add(new Option<string[]?>(name) { Description = description, HelpName = "name" }, (record, value) => value is null or [] ? record : set(record, value), record => set(record, []));

    /// <summary>A field with a number.</summary>
    public RecordFields<T> Number(string name, string description, Func<T, double?, T> set) =>
        Add(NumberOption.Create(name, description), (record, value) => value is null ? record : set(record, value), record => set(record, null));

    /// <summary>A field with a count.</summary>
    public RecordFields<T> Count(string name, string description, Func<T, int?, T> set) =>
        Add(new Option<int?>(name) { Description = description, HelpName = "count" }, (record, value) => value is null ? record : set(record, value), record => set(record, null));

    /// <summary>A field that is true or false.</summary>
    public RecordFields<T> Flag(string name, string description, Func<T, bool?, T> set) =>
        Add(new Option<bool?>(name) { Description = description, HelpName = "true or false", Arity = ArgumentArity.ExactlyOne }, (record, value) => value is null ? record : set(record, value), record => set(record, null));

    /// <summary>A field with a date.</summary>
    public RecordFields<T> Date(string name, string description, Func<T, FieldDate, T> set, Func<T, T>? clear) =>
        Add(DateOption.Create(name, description, host), (record, value) => value is { } date ? set(record, date) : record, clear);

    /// <summary>A field with a moment.</summary>
    public RecordFields<T> Moment(string name, string description, Func<T, DateTimeOffset, T> set, Func<T, T> clear) =>
        Add(DateOption.Create(name, description, host, needsHour: true), (record, value) => value?.Moment is { } moment ? set(record, moment) : record, clear);

    /// <summary>A field with one of some words.</summary>
    public RecordFields<T> Choice<TChoice>(string name, string description, Func<T, TChoice, T> set)
        where TChoice : struct, Enum =>
        Add(Words(ChoiceOption.Optional<TChoice>(name, description)), (record, value) => value is { } word ? set(record, word) : record, record => set(record, default));

    /// <summary>A field with a quantity.</summary>
    public RecordFields<T> Quantity<TQuantity>(string name, string description, TryRead<TQuantity> read, Func<T, TQuantity?, T> set)
        where TQuantity : struct
    {
        var option = QuantityOption.Optional(name, description, read, default);
        _fields.Add((option, (parsed, record) => parsed.GetResult(option) is { Implicit: false } ? set(record, parsed.GetValue(option)) : record));
        _clears[name[2..]] = record => set(record, null);
        return this;
    }

    /// <summary>Names of fields that are both given and to be emptied.</summary>
    public IEnumerable<string> GivenAndCleared(ParseResult parsed, IEnumerable<string> cleared) => Given(parsed).Intersect(cleared, StringComparer.Ordinal);

    /// <summary>Names of the fields that are given.</summary>
    public IEnumerable<string> Given(ParseResult parsed) => _fields.Where(field => parsed.GetResult(field.Option) is { Implicit: false }).Select(field => field.Option.Name[2..]);

    /// <summary>Puts the options into a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="leftOut">What becomes of a field whose option is left out, where the option does not say it itself.</param>
    public void AddTo(Command command, string leftOut = "Not recorded where left out.")
    {
        foreach (var (option, _) in _fields)
        {
            option.Description = option.Description!.Contains("left out", StringComparison.Ordinal) ? option.Description : $"{option.Description} {leftOut}";
            command.Options.Add(option);
        }
    }

    /// <summary>A record with the fields that were given.</summary>
    public T Apply(ParseResult parsed, T record) => _fields.Aggregate(record, (changed, field) => field.Set(parsed, changed));

    /// <summary>A record with some fields emptied.</summary>
    public T Clear(T record, IEnumerable<string> names) => names.Aggregate(record, (changed, name) => _clears[name](changed));

    private static Option<TChoice?> Words<TChoice>(Option<TChoice?> option)
        where TChoice : struct, Enum
    {
        option.HelpName = "word";
        return option;
    }

    private RecordFields<T> Add<TValue>(Option<TValue> option, Func<T, TValue?, T> set, Func<T, T>? clear)
    {
        _fields.Add((option, (parsed, record) => set(record, parsed.GetValue(option))));
        if (clear is not null)
        {
            _clears[option.Name[2..]] = clear;
        }

        return this;
    }
}
