namespace StudioKit.FieldFiles;

/// <summary>Writes a file whole or not at all.</summary>
internal static class WholeFile
{
    public static void Write(string path, Action<Stream> write)
    {
        var partial = path + ".part";
        try
        {
            using (var stream = File.Create(partial))
            {
                write(stream);
                stream.Flush(flushToDisk: true);
            }

            File.Move(partial, path, overwrite: true);
        }
        finally
        {
            File.Delete(partial);
        }
    }
}
