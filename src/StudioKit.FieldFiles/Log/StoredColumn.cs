using SQLitePCL;

namespace StudioKit.FieldFiles.Log;

/// <summary>A column of a table while its rows are read: a text that many of them hold is kept once.</summary>
/// <param name="name">Its name.</param>
/// <param name="place">Where it stands in what is read.</param>
internal sealed class StoredColumn(string name, int place)
{
    // A column of captions or identifiers would only be remembered in vain.
    private const int MostTexts = 200;
    private readonly HashSet<string> _texts = new(StringComparer.Ordinal);
    private string _last = "";

    /// <summary>What the row at hand holds in it, asked of SQLite itself, as a long log has a million of them.</summary>
    public KeyValuePair<string, object?> Read(sqlite3_stmt rows)
    {
        var value = Value(rows, place);
        return KeyValuePair.Create(name, value is string text ? _last = Shared(text) : value);
    }

    /// <summary>What the row at hand holds in a column: a text, a number, bytes or nothing.</summary>
    public static object? Value(sqlite3_stmt rows, int place) => raw.sqlite3_column_type(rows, place) switch
    {
        raw.SQLITE_NULL => null,
        raw.SQLITE_TEXT => raw.sqlite3_column_text(rows, place).utf8_to_string(),
        raw.SQLITE_INTEGER => raw.sqlite3_column_int64(rows, place),
        raw.SQLITE_FLOAT => raw.sqlite3_column_double(rows, place),
        _ => raw.sqlite3_column_blob(rows, place).ToArray(),
    };

    // Records that belong to one lie side by side.
    private string Shared(string text)
    {
        if (text == _last)
        {
            return _last;
        }

        if (!_texts.TryGetValue(text, out var known) && _texts.Count < MostTexts)
        {
            _texts.Add(text);
        }

        return known ?? text;
    }
}
