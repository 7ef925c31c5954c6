using Microsoft.Data.Sqlite;

namespace StudioKit.FieldFiles.Tests.Log;

/// <summary>Another program at work on a log's file.</summary>
internal static class RawLog
{
    public static void Run(string path, string sql)
    {
        using var connection = new SqliteConnection($"Data Source={path};Pooling=False;Foreign Keys=False");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }
}
