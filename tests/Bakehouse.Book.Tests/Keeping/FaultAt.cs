namespace Bakehouse.Book.Tests.Keeping;

using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

/// <summary>Counts every call of the database and lets the one that is armed fail, before or after it was carried out.</summary>
internal sealed class FaultAt : DbCommandInterceptor, IDbTransactionInterceptor, IDbConnectionInterceptor
{
    private int armed;
    private int calls;
    private bool after;
    private int code;

    /// <summary>Called before and after each call, whether it fails or not.</summary>
    public Action? Watch { get; init; }

    /// <summary>True once the armed call was reached.</summary>
    public bool WasReached { get; private set; }

    /// <summary>The n-th call from now on fails.</summary>
    /// <param name="resultCode">Code of SQLite: https://www.sqlite.org/rescode.html</param>
    public void Arm(int n, bool afterwards, int resultCode) =>
        (armed, calls, after, code, WasReached) = (n, 0, afterwards, resultCode, false);

    public void Disarm() => armed = 0;

    public override InterceptionResult<DbDataReader> ReaderExecuting(DbCommand command, CommandEventData eventData, InterceptionResult<DbDataReader> result) => Before(result);

    public override DbDataReader ReaderExecuted(DbCommand command, CommandExecutedEventData eventData, DbDataReader result) => After(result);

    public override InterceptionResult<int> NonQueryExecuting(DbCommand command, CommandEventData eventData, InterceptionResult<int> result) => Before(result);

    public override int NonQueryExecuted(DbCommand command, CommandExecutedEventData eventData, int result) => After(result);

    public override InterceptionResult<object> ScalarExecuting(DbCommand command, CommandEventData eventData, InterceptionResult<object> result) => Before(result);

    public override object? ScalarExecuted(DbCommand command, CommandExecutedEventData eventData, object? result) => After(result);

    public InterceptionResult<DbTransaction> TransactionStarting(DbConnection connection, TransactionStartingEventData eventData, InterceptionResult<DbTransaction> result) => Before(result);

    public DbTransaction TransactionStarted(DbConnection connection, TransactionEndEventData eventData, DbTransaction result) => After(result);

    public InterceptionResult TransactionCommitting(DbTransaction transaction, TransactionEventData eventData, InterceptionResult result) => Before(result);

    public void TransactionCommitted(DbTransaction transaction, TransactionEndEventData eventData) => After(0);

    public InterceptionResult ConnectionOpening(DbConnection connection, ConnectionEventData eventData, InterceptionResult result) => Before(result);

    public void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => After(0);

    private T Before<T>(T result)
    {
        calls++;
        Watch?.Invoke();
        Fail(afterwards: false);
        return result;
    }

    private T After<T>(T result)
    {
        Watch?.Invoke();
        Fail(afterwards: true);
        return result;
    }

    private void Fail(bool afterwards)
    {
        if (calls == armed && after == afterwards)
        {
            armed = 0;
            WasReached = true;
            throw new SqliteException("A planted fault", code);
        }
    }
}
