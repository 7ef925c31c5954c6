using System.Security.Cryptography;
using System.Text;
using System.Text.Json;

namespace StudioKit.FieldFiles.Log;

/// <summary>What one row of a table holds: texts, numbers and gaps by the names of their columns, in order.</summary>
internal sealed class LogBody(IReadOnlyList<KeyValuePair<string, object?>> values)
{
    private readonly Dictionary<string, object?> _byName = new(values, StringComparer.Ordinal);

    public IReadOnlyList<KeyValuePair<string, object?>> Values { get; } = values;

    public string Id => (string)this["id"]!;

    /// <summary>The row as one line of JSON; the same row gives the same line.</summary>
    public string Text { get; } = Write(values);

    /// <summary>Tells a row that was written whole from one in which a bit has flipped since, or that another program has changed.</summary>
    public string Seal => SealOf(Text);

    /// <summary>A value; none where the column is empty or missing.</summary>
    public object? this[string column] => _byName.GetValueOrDefault(column);

    /// <summary>Whether it holds everything that another row does; columns that a later version added may differ.</summary>
    public bool Holds(LogBody other) => Write([.. other.Values.Select(value => KeyValuePair.Create(value.Key, this[value.Key]))]) == other.Text;

    /// <summary>The same row with another value in a column.</summary>
    public LogBody With(string column, object? value) => new([.. Values.Select(pair => pair.Key == column ? KeyValuePair.Create(column, value) : pair)]);

    public static string SealOf(string text) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text)).AsSpan(0, 8));

    public static LogBody Read(string text)
    {
        using var document = JsonDocument.Parse(text);
        return new LogBody([.. document.RootElement.EnumerateObject().Select(property => KeyValuePair.Create(property.Name, Value(property.Value)))]);
    }

    private static string Write(IReadOnlyList<KeyValuePair<string, object?>> values)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream))
        {
            writer.WriteStartObject();
            foreach (var (column, value) in values)
            {
                WriteValue(writer, column, value);
            }

            writer.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void WriteValue(Utf8JsonWriter writer, string column, object? value)
    {
        switch (value)
        {
            case string text:
                writer.WriteString(column, text);
                break;
            case long whole:
                writer.WriteNumber(column, (double)whole);
                break;
            case double number when double.IsFinite(number):
                writer.WriteNumber(column, number);
                break;
            case null:
                writer.WriteNull(column);
                break;
            default:
                // Nothing else is ever put in; what a damaged file holds only has to differ.
                writer.WriteString(column, $"?{value}");
                break;
        }
    }

    private static object? Value(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.String => element.GetString(),
        JsonValueKind.Number => element.GetDouble(),
        _ => null,
    };
}
