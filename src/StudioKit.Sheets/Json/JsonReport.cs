using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using UnitsNet;

namespace StudioKit.Sheets.Json;

/// <summary>One JSON document with camelCase keys that end in their unit; numbers keep seven significant digits.</summary>
public sealed class JsonReport : IDisposable
{
    private const int Enough = 1 << 15;
    private readonly ArrayBufferWriter<byte> _buffer = new();
    private readonly Utf8JsonWriter _writer;
    private readonly TextWriter _output;

    private JsonReport(TextWriter output)
    {
        _output = output;
        _writer = new Utf8JsonWriter(_buffer, new JsonWriterOptions { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
    }

    /// <summary>Builds a document whose root is an object.</summary>
    public static string Document(Action<JsonReport> fill)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        Write(text, fill);
        return text.ToString();
    }

    /// <summary>Writes such a document as it is built, so that a long list is never held whole, and ends its last line.</summary>
    public static void WriteLine(TextWriter output, Action<JsonReport> fill)
    {
        ArgumentNullException.ThrowIfNull(output);
        Write(output, fill);
        output.WriteLine();
    }

    /// <summary>A text; null where there is none.</summary>
    public JsonReport Text(string key, string? value)
    {
        _writer.WriteString(key, value);
        return this;
    }

    /// <summary>True or false.</summary>
    public JsonReport Flag(string key, bool value)
    {
        _writer.WriteBoolean(key, value);
        return this;
    }

    /// <summary>A count; null where there is none.</summary>
    public JsonReport Count(string key, int? value) => Number(key, value);

    /// <summary>A number to seven significant digits; null where it is none or not finite.</summary>
    public JsonReport Number(string key, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            _writer.WriteNumber(key, SevenDigits(number));
        }
        else
        {
            _writer.WriteNull(key);
        }

        return this;
    }

    /// <summary>An amount of money to the last digit; null where there is none.</summary>
    public JsonReport Amount(string key, decimal? value)
    {
        if (value is { } amount)
        {
            _writer.WriteNumber(key, amount);
        }
        else
        {
            _writer.WriteNull(key);
        }

        return this;
    }

    /// <summary>A length under a key to which <c>Mm</c> is added.</summary>
    public JsonReport Millimetres(string key, Length? value) => Number(key + "Mm", value?.Millimeters);

    /// <summary>A length under a key to which <c>Um</c> is added.</summary>
    public JsonReport Micrometres(string key, Length? value) => Number(key + "Um", value?.Micrometers);

    /// <summary>A mass under a key to which <c>G</c> is added.</summary>
    public JsonReport Grams(string key, Mass? value) => Number(key.Length == 0 ? "massG" : key + "G", value?.Grams);

    /// <summary>Stops under a key to which <c>Stops</c> is added.</summary>
    public JsonReport Stops(string key, Physics.Exposure.Stops? value) => Number(key + "Stops", value?.Value);

    /// <summary>A list of texts.</summary>
    public JsonReport Texts(string key, IEnumerable<string> values)
    {
        _writer.WriteStartArray(key);
        foreach (var value in values)
        {
            _writer.WriteStringValue(value);
        }

        _writer.WriteEndArray();
        return this;
    }

    /// <summary>A list of numbers to seven significant digits, null where one is not finite.</summary>
    public JsonReport Numbers(string key, IEnumerable<double> values)
    {
        _writer.WriteStartArray(key);
        foreach (var value in values)
        {
            if (double.IsFinite(value))
            {
                _writer.WriteNumberValue(SevenDigits(value));
            }
            else
            {
                _writer.WriteNullValue();
            }
        }

        _writer.WriteEndArray();
        return this;
    }

    /// <summary>An object of its own under the key.</summary>
    public JsonReport Section(string key, Action fill)
    {
        _writer.WriteStartObject(key);
        fill();
        _writer.WriteEndObject();
        return this;
    }

    /// <summary>A list of objects, each filled from its item.</summary>
    public JsonReport List<T>(string key, IEnumerable<T> items, Action<T> fill)
    {
        _writer.WriteStartArray(key);
        foreach (var item in items)
        {
            _writer.WriteStartObject();
            fill(item);
            _writer.WriteEndObject();
            if (_buffer.WrittenCount + _writer.BytesPending > Enough)
            {
                HandOn();
            }
        }

        _writer.WriteEndArray();
        return this;
    }

    /// <inheritdoc/>
    public void Dispose() => _writer.Dispose();

    private static void Write(TextWriter output, Action<JsonReport> fill)
    {
        using var report = new JsonReport(output);
        report._writer.WriteStartObject();
        fill(report);
        report._writer.WriteEndObject();
        report.HandOn();
    }

    // What the JSON writer has finished is whole characters.
    private void HandOn()
    {
        _writer.Flush();
        _output.Write(Encoding.UTF8.GetString(_buffer.WrittenSpan));
        _buffer.ResetWrittenCount();
    }

    // Seven digits say more than any of our inputs know, and hide the last bits that differ between processors.
    private static double SevenDigits(double value)
    {
        if (value == 0)
        {
            return 0;
        }

        var digits = 6 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        return digits is >= 0 and <= 15 ? Math.Round(value, digits) : value;
    }
}
