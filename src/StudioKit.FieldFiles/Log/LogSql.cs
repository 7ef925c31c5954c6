using System.Globalization;
using System.Runtime.InteropServices;
using Microsoft.Data.Sqlite;
using SQLitePCL;

namespace StudioKit.FieldFiles.Log;

/// <summary>Short statements, their values named <c>$a</c>, <c>$b</c> and so on in order.</summary>
internal static class LogSql
{
    /// <summary>Runs a statement and gives the first column of its rows as text.</summary>
    public static List<string> Texts(SqliteConnection connection, string sql, params object?[] values)
    {
        using var command = Command(connection, sql, values);
        using var reader = command.ExecuteReader();
        var texts = new List<string>();
        while (reader.Read())
        {
            texts.Add(Convert.ToString(reader.GetValue(0), CultureInfo.InvariantCulture) ?? "");
        }

        return texts;
    }

    /// <summary>Runs a statement and gives the whole number in its first row; 0 where there is none.</summary>
    public static long Number(SqliteConnection connection, string sql, params object?[] values)
    {
        using var command = Command(connection, sql, values);
        return command.ExecuteScalar() is long number ? number : 0;
    }

    /// <summary>Runs statements.</summary>
    public static void Run(SqliteConnection connection, string sql, params object?[] values)
    {
        using var command = Command(connection, sql, values);
        command.ExecuteNonQuery();
    }

    /// <summary>All bytes of a database, as its file would have them.</summary>
    public static byte[] Contents(SqliteConnection connection)
    {
        var start = raw.sqlite3_serialize(connection.Handle, "main", out var length, 0);
        try
        {
            var contents = new byte[length];
            Marshal.Copy(start, contents, 0, contents.Length);
            return contents;
        }
        finally
        {
            raw.sqlite3_free(start);
        }
    }

    private static SqliteCommand Command(SqliteConnection connection, string sql, object?[] values)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        for (var i = 0; i < values.Length; i++)
        {
            command.Parameters.AddWithValue("$" + (char)('a' + i), values[i] ?? DBNull.Value);
        }

        return command;
    }
}
