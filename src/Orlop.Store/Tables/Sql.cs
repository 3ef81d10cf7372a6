using Microsoft.Data.Sqlite;

namespace Orlop.Store.Tables;

/// <summary>SQL in sight, with its parameters in order (<c>$1</c>, <c>$2</c>).</summary>
internal static class Sql
{
    public static int Execute(this SqliteConnection db, string sql, params ReadOnlySpan<object?> values)
    {
        using SqliteCommand command = Prepare(db, sql, values);
        return command.ExecuteNonQuery();
    }

    /// <summary>The first column of the first row, or null.</summary>
    public static object? Value(this SqliteConnection db, string sql, params ReadOnlySpan<object?> values)
    {
        using SqliteCommand command = Prepare(db, sql, values);
        return command.ExecuteScalar() is { } value and not DBNull ? value : null;
    }

    public static List<T> Rows<T>(this SqliteConnection db, Func<SqliteDataReader, T> read, string sql, params ReadOnlySpan<object?> values)
    {
        using SqliteCommand command = Prepare(db, sql, values);
        using SqliteDataReader reader = command.ExecuteReader();
        List<T> rows = [];
        while (reader.Read())
        {
            rows.Add(read(reader));
        }

        return rows;
    }

    private static SqliteCommand Prepare(SqliteConnection db, string sql, ReadOnlySpan<object?> values)
    {
        SqliteCommand command = db.CreateCommand();
#pragma warning disable CA2100 // every text handed over is a constant of this project; values travel as parameters
        command.CommandText = sql;
#pragma warning restore CA2100
        for (int index = 0; index < values.Length; index++)
        {
            command.Parameters.AddWithValue(FormattableString.Invariant($"${index + 1}"), values[index] ?? DBNull.Value);
        }

        return command;
    }
}
