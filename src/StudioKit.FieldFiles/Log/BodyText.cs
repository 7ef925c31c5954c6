using System.Buffers;
using System.Text.Json;

namespace StudioKit.FieldFiles.Log;

/// <summary>Writes rows as lines of JSON, one after another into the same memory; the same row gives the same line.</summary>
internal sealed class BodyText
{
    private readonly ArrayBufferWriter<byte> _line = new();

    /// <summary>The line of a row in UTF-8, which stands until the next is written.</summary>
    /// <param name="values">Texts, numbers and gaps by the names of their columns.</param>
    public ReadOnlySpan<byte> Of(IReadOnlyList<KeyValuePair<string, object?>> values)
    {
        _line.ResetWrittenCount();
        using var writer = new Utf8JsonWriter(_line);
        writer.WriteStartObject();
        foreach (var (column, value) in values)
        {
            Write(writer, column, value);
        }

        writer.WriteEndObject();
        writer.Flush();
        return _line.WrittenSpan;
    }

    private static void Write(Utf8JsonWriter writer, string column, object? value)
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
}
