-- What a writer does in Neovim, from the finding to the tidy document; what came of it is printed as one line of JSON.
-- Run by neovim.test.ts with the block of the readme as init.lua and the procedure open.

-- Long enough for a busy machine; nothing waits for as long as that unless something is wrong.
local longest = 60000
-- What Neovim would have shown as a message of its own.
local told = {}
vim.notify = function(message)
  table.insert(told, message)
end

local function line_of(text)
  for number, line in ipairs(vim.api.nvim_buf_get_lines(0, 0, -1, true)) do
    if line:find(text, 1, true) then
      return number, line
    end
  end
  error('There is no line with ' .. text)
end

local function go_to(text, after)
  local number, line = line_of(text)
  local _, last = line:find(after, 1, true)
  vim.api.nvim_win_set_cursor(0, { number, last })
end

local function replace_line(text, new)
  local number = line_of(text)
  vim.api.nvim_buf_set_lines(0, number - 1, number, true, { new })
end

local function findings()
  return vim.tbl_map(function(found)
    return { line = found.lnum + 1, column = found.col + 1, message = found.message, severity = found.severity }
  end, vim.diagnostic.get(0))
end

local function wait_for(what, condition)
  if not vim.wait(longest, condition, 20) then
    error('Waited in vain for ' .. what)
  end
end

local function has_unit_finding()
  for _, found in ipairs(findings()) do
    if found.message:find('has no unit', 1, true) then
      return true
    end
  end
  return false
end

local function hover_at(text, after)
  go_to(text, after)
  local answers = vim.lsp.buf_request_sync(0, 'textDocument/hover', vim.lsp.util.make_position_params(0, 'utf-16'), longest)
  for _, answer in pairs(answers or {}) do
    return vim.lsp.util.convert_input_to_markdown_lines(answer.result.contents)
  end
  error('No hover')
end

-- Neovim asks for the fixes, lets one be chosen and applies it; only the choice is made here.
local function choose_first_fix()
  local offered
  vim.ui.select = function(choices, options, choose)
    offered = vim.tbl_map(options.format_item, choices)
    choose(choices[1])
  end
  vim.lsp.buf.code_action()
  wait_for('fixes', function()
    return offered ~= nil
  end)
  return offered
end

-- Types as far as the list of what may stand here, takes its first item and leaves insert mode.
local function complete_after(typed)
  local keys = function(text)
    return vim.api.nvim_replace_termcodes(text, true, false, true)
  end
  local offered
  local function leave_with(last)
    vim.api.nvim_feedkeys(keys(last), 'n', false)
  end
  vim.api.nvim_create_autocmd('CompleteChanged', {
    once = true,
    callback = function()
      offered = vim.tbl_map(function(item)
        return item.word
      end, vim.fn.complete_info({ 'items' }).items)
      vim.schedule(function()
        leave_with('<C-y><Esc>')
      end)
    end,
  })
  -- Where no list comes, insert mode would never end.
  vim.defer_fn(function()
    if offered == nil then
      leave_with('<Esc>')
    end
  end, longest)
  vim.api.nvim_feedkeys('A' .. typed .. keys('<C-x><C-o>'), 'nx!', false)
  return offered
end

local function format()
  if vim.lsp.buf.format then
    vim.lsp.buf.format({ timeout_ms = longest })
  else
    vim.lsp.buf.formatting_sync(nil, longest)
  end
end

local function root()
  return (vim.lsp.get_clients or vim.lsp.get_active_clients)()[1].config.root_dir
end

local function work()
  local seen = {}
  wait_for('the finding', has_unit_finding)
  seen.root = root()
  seen.findings = findings()
  seen.hover = hover_at('torque: 8 ± 0.8 N·m', 'torque: ')

  go_to('torque: 5 ± 0.5', 'torque: ')
  seen.fixes = choose_first_fix()
  wait_for('the end of the finding', function()
    return not has_unit_finding()
  end)
  seen.fixed = vim.trim(vim.api.nvim_get_current_line())
  seen.left = findings()

  replace_line('tighten: wheel-nut', '          - tighten:')
  go_to('          - tighten:', 'tighten:')
  seen.offered = complete_after(' ')
  seen.taken = vim.trim(vim.api.nvim_get_current_line())

  replace_line('torque: 5', '            torque:   5 +/- 0.5 Nm')
  format()
  seen.text = table.concat(vim.api.nvim_buf_get_lines(0, 0, -1, true), '\n') .. '\n'
  seen.told = told
  return seen
end

local ok, result = xpcall(work, debug.traceback)
io.stdout:write(vim.json.encode(ok and result or { failed = result }), '\n')
vim.cmd(ok and 'qall!' or 'cquit!')
