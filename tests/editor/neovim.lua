-- Run in Neovim by neovim.test.ts, with the README's settings: opens the file, writes down the diagnostics, lists the food at the first unlisted one, saves.
local report = {}

local function tell(name, value)
  report[name] = value
  vim.fn.writefile({ vim.fn.json_encode(report) }, vim.env.TAMIS_REPORT)
end

vim.cmd('edit ' .. vim.env.TAMIS_RECIPE)
vim.bo.filetype = 'markdown'

local function shown(code)
  return vim.tbl_filter(function(each)
    return each.user_data.lsp.code == code
  end, vim.diagnostic.get(0))
end

local found = vim.wait(60000, function()
  return #shown('unlisted-ingredient') > 0
end)
tell('diagnostics', vim.tbl_map(function(each)
  return { line = each.lnum, column = each.col, code = each.user_data.lsp.code, severity = each.severity }
end, vim.diagnostic.get(0)))

if found then
  local first = shown('unlisted-ingredient')[1]
  vim.api.nvim_win_set_cursor(0, { first.lnum + 1, first.col })
  local before = #shown('unlisted-ingredient')
  -- Stands in for the person who chooses from the menu.
  vim.ui.select = function(items, _, choose)
    tell('offered', vim.tbl_map(function(item) return item[2].title end, items))
    for _, item in ipairs(items) do
      if item[2].title:find('to the list') then return choose(item) end
    end
  end
  vim.lsp.buf.code_action()
  tell('cleared', vim.wait(60000, function()
    return #shown('unlisted-ingredient') < before
  end))
  vim.cmd('write')
end
for _, client in ipairs(vim.lsp.get_active_clients()) do
  client.stop()
  vim.wait(5000, function() return client.is_stopped() end)
end
vim.cmd('qall!')
