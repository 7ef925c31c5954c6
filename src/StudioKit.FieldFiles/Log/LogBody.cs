using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace StudioKit.FieldFiles.Log;

/// <summary>What one row of a table holds: texts, numbers and gaps by the names of their columns, in order.</summary>
internal sealed class LogBody(IReadOnlyList<KeyValuePair<string, object?>> values)
{
    private string? _text;
    private int _place;

    public IReadOnlyList<KeyValuePair<string, object?>> Values { get; } = values;

    public string Id => (string)this["id"]!;

    /// <summary>The row as one line of JSON; the same row gives the same line.</summary>
    public string Text => _text ??= Encoding.UTF8.GetString(new BodyText().Of(Values));

    /// <summary>Tells a row that was written whole from one in which a bit has flipped since, or that another program has changed.</summary>
    public string Seal => SealBy(new BodyText());

    /// <summary>A value; none where the column is empty or missing.</summary>
    public object? this[string column]
    {
        get
        {
            // A row has too few columns for a table of them to be worth its memory, and they are asked for in order: it is this one or the next.
            for (var i = 0; i < Values.Count; i++)
            {
                var place = _place + i < Values.Count ? _place + i : _place + i - Values.Count;
                if (Values[place].Key == column)
                {
                    _place = place;
                    return Values[place].Value;
                }
            }

            return null;
        }
    }

    /// <summary>Whether it holds everything that another row does; columns that a later version added may differ.</summary>
    public bool Holds(LogBody other) => new LogBody([.. other.Values.Select(value => KeyValuePair.Create(value.Key, this[value.Key]))]).Text == other.Text;

    /// <summary>The same row with another value in a column.</summary>
    public LogBody With(string column, object? value) => new([.. Values.Select(pair => pair.Key == column ? KeyValuePair.Create(column, value) : pair)]);

    /// <summary>Its seal, made by what makes those of other rows, too.</summary>
    public string SealBy(BodyText text) => SealOf(text.Of(Values));

    public static string SealOf(string text) => SealOf(Encoding.UTF8.GetBytes(text));

    public static LogBody Read(string text)
    {
        using var document = JsonDocument.Parse(text);
        var values = document.RootElement.EnumerateObject().Select(property => KeyValuePair.Create(property.Name, Value(property.Value))).ToList();
        return values.DistinctBy(value => value.Key, StringComparer.Ordinal).Count() == values.Count ? new LogBody(values) : throw new FormatException("a change holds a column twice");
    }

    private static string SealOf(ReadOnlySpan<byte> text)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(text, hash);
        return Convert.ToHexStringLower(hash[..8]);
    }

    private static object? Value(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.String => element.GetString(),
        JsonValueKind.Number => element.GetDouble(),
        _ => null,
    };
}
